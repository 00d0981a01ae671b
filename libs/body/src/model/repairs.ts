import type { BodyDimension } from '../body-dimension.ts';
import { swappedDigits } from './typed-digits.ts';

/** Slips a maker makes with a tape and a form; `unlikely` is a value that none of them explains. */
export type SlipCode =
  | 'inches-as-centimetres'
  | 'centimetres-as-inches'
  | 'pounds-as-kilograms'
  | 'half-girth'
  | 'swapped-digits'
  | 'swapped-fields'
  | 'unlikely';

/** A known slip undone: the values (mm; weight: g) at these places become others. */
export interface Repair {
  readonly code: Exclude<SlipCode, 'unlikely'>;
  readonly changes: readonly { readonly index: number; readonly value: number }[];
}

/** A value as typed, and what the model holds likely for it before any other is known (mm; weight: g). */
export interface Typed {
  readonly name: BodyDimension;
  readonly value: number;
  readonly expected: number;
}

/** Slips that multiply a value by a constant. */
const FACTORS = [
  { code: 'inches-as-centimetres', factor: 2.54, of: (name: string) => name !== 'weight' },
  { code: 'centimetres-as-inches', factor: 1 / 2.54, of: (name: string) => name !== 'weight' },
  { code: 'half-girth', factor: 2, of: (name: string) => name.endsWith('-girth') },
  { code: 'pounds-as-kilograms', factor: 0.45359237, of: (name: string) => name === 'weight' },
] as const;

/**
 * Every known slip undone: of one value alone, of two that changed places, and of all values together that were typed or measured in the same wrong way.
 * @param alone the places of values that changing one of them could help
 */
export function repairsOf(typed: readonly Typed[], alone: readonly number[]): readonly Repair[] {
  return [...digitSwaps(typed, alone), ...fieldSwaps(typed), ...FACTORS.flatMap((slip) => scaled(typed, alone, slip))];
}

function digitSwaps(typed: readonly Typed[], alone: readonly number[]): Repair[] {
  return alone.flatMap((index) => {
    const { name, value } = typed[index]!;
    return swappedDigits(value, name === 'weight' ? 'weight' : 'length').map((other): Repair => ({
      code: 'swapped-digits',
      changes: [{ index, value: other }],
    }));
  });
}

function fieldSwaps(typed: readonly Typed[]): Repair[] {
  const lengths = typed.flatMap(({ name }, index) => (name === 'weight' ? [] : [index]));
  return lengths.flatMap((a) =>
    lengths
      .filter((b) => b > a)
      .map((b): Repair => {
        const changes = [
          { index: a, value: typed[b]!.value },
          { index: b, value: typed[a]!.value },
        ];
        return { code: 'swapped-fields', changes };
      }),
  );
}

function scaled(
  typed: readonly Typed[],
  alone: readonly number[],
  { code, factor, of }: (typeof FACTORS)[number],
): Repair[] {
  const change = (index: number) => ({ index, value: typed[index]!.value * factor });
  const may = typed.flatMap(({ name }, index) => (of(name) ? [index] : []));
  const off = (index: number, by: number) => Math.abs(Math.log((typed[index]!.value * by) / typed[index]!.expected));
  const alike = may.filter((index) => off(index, factor) < off(index, 1));
  const together: Repair[] = alike.length < 2 ? [] : [{ code, changes: alike.map(change) }];
  const single = alone.filter((index) => may.includes(index));
  return [...single.map((index): Repair => ({ code, changes: [change(index)] })), ...together];
}
