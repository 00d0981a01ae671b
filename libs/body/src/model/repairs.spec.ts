import { describe, expect, it } from 'vitest';
import { repairsOf, type Typed } from './repairs.ts';

const typed = (name: Typed['name'], value: number, expected = value): Typed => ({ name, value, expected });
const of = (code: string, values: readonly Typed[], alone: readonly number[]) =>
  repairsOf(values, alone).flatMap((repair) => (repair.code === code ? [repair.changes] : []));

describe('known slips undone', () => {
  const values = [typed('chest-girth', 370, 940), typed('weight', 150_000, 68_000), typed('arm-length', 1500, 590)];

  it('are a length in the wrong unit, each way', () => {
    expect(of('inches-as-centimetres', values, [0, 1, 2])).toEqual([
      [{ index: 0, value: 370 * 2.54 }],
      [{ index: 2, value: 1500 * 2.54 }],
    ]);
    expect(of('centimetres-as-inches', values, [2])).toEqual([[{ index: 2, value: 1500 / 2.54 }]]);
  });

  it('are half a girth, of girths alone', () => {
    expect(of('half-girth', values, [0, 1, 2])).toEqual([[{ index: 0, value: 740 }]]);
  });

  it('are pounds, of a weight alone', () => {
    expect(of('pounds-as-kilograms', values, [0, 1, 2])).toEqual([[{ index: 1, value: 150_000 * 0.45359237 }]]);
  });

  it('are digits of those that changing one could help', () => {
    expect(of('swapped-digits', [typed('chest-girth', 490)], [])).toEqual([]);
    expect(of('swapped-digits', [typed('chest-girth', 490)], [0])).toContainEqual([{ index: 0, value: 940 }]);
  });

  it('are two lengths that changed places, each pair once, and never a weight', () => {
    expect(of('swapped-fields', [...values, typed('hip-girth', 990)], [])).toEqual([
      [
        { index: 0, value: 1500 },
        { index: 2, value: 370 },
      ],
      [
        { index: 0, value: 990 },
        { index: 3, value: 370 },
      ],
      [
        { index: 2, value: 990 },
        { index: 3, value: 1500 },
      ],
    ]);
  });

  it('are all values together that come nearer to what is expected, two at least', () => {
    const inches = [typed('chest-girth', 370, 940), typed('hip-girth', 390, 990), typed('stature', 1650, 1650)];
    expect(of('inches-as-centimetres', inches, [])).toEqual([
      [
        { index: 0, value: 370 * 2.54 },
        { index: 1, value: 390 * 2.54 },
      ],
    ]);
    expect(of('inches-as-centimetres', inches.slice(1), [])).toEqual([]);
  });
});
