import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowForAge, rowForChest } from './row-for-chest.ts';

const inch = (inches: number) => inches * 25.4;

describe('rowForChest', () => {
  it.each([
    ['woman', 37, 'M', 'in'],
    ['woman', 36, 'M', 'in'],
    ['woman', 38, 'M', 'in'],
    ['woman', 38.9, 'M', 'between'],
    ['woman', 39, 'L', 'between'], // as near to M as to L: the larger
    ['man', 45, 'XL', 'between'],
    ['child', 25, '6', 'in'],
    ['child', 25.6, '6', 'between'],
    ['baby', 18, '12 months', 'in'],
    ['woman', 27.2, 'XS', 'below'], // half a gap is 1 in
    ['woman', 63, '5X', 'above'],
    ['woman', 26.5, undefined, 'below'],
    ['woman', 64, undefined, 'above'],
    ['child', 32.75, '16', 'above'], // half its last gap is ½ in
    ['child', 34, undefined, 'above'],
  ] as const)('%s of %d in: %s, %s', (figure, inches, size, lies) => {
    const found = rowForChest(figure, inch(inches));
    expect(found.row?.size).toBe(size);
    expect(found.lies).toBe(lies);
  });

  it.each([
    ['baby', 457, '12 months'], // 18 in are 457.2
    ['baby', 406, '3 months'], // 16 in are 406.4
    ['woman', 760, 'XS'], // 30 in are 762
  ] as const)('%s of %d mm, as a tape in centimetres reads it: %s', (figure, mm, size) => {
    expect(rowForChest(figure, mm)).toMatchObject({ row: { size }, lies: 'in' });
  });

  it('says the gap', () => {
    expect(rowForChest('woman', inch(39)).note).toMatchObject({
      code: 'between-sizes',
      params: {
        smaller: { size: 'M', chestMm: { lowMm: expect.closeTo(inch(36), 6), highMm: expect.closeTo(inch(38), 6) } },
        larger: { size: 'L', chestMm: { lowMm: expect.closeTo(inch(40), 6), highMm: expect.closeTo(inch(42), 6) } },
        read: 'L',
      },
    });
    expect(rowForChest('child', inch(34)).note).toMatchObject({
      code: 'beyond-sizes',
      params: { end: { size: '16' }, side: 'above', read: false, figure: 'child' },
    });
  });

  it('has no table for a figure that was not said', () => {
    expect(rowForChest('unsaid', 940)).toMatchObject({ row: null, lies: null, note: { code: 'no-size-table' } });
  });

  it('never reads a smaller size for a larger chest', () => {
    const figure = fc.constantFrom('woman', 'man', 'child', 'baby');
    const chest = fc.double({ min: 350, max: 1700, noNaN: true });
    fc.assert(
      fc.property(figure, chest, chest, (who, one, other) => {
        const [smaller, larger] = [Math.min(one, other), Math.max(one, other)].map((mm) => rowForChest(who, mm).row);
        if (!smaller || !larger) return;
        expect(smaller.mm['chest-girth']!.mid).toBeLessThanOrEqual(larger.mm['chest-girth']!.mid);
      }),
    );
  });
});

describe('rowForAge', () => {
  it.each([
    ['child', 6, '6', 'in'],
    ['child', 7, '8', 'between'],
    ['child', 1.2, '2', 'below'],
    ['child', 18, undefined, 'above'],
    ['baby', 0.75, '12 months', 'between'],
    ['baby', 1 / 12, undefined, 'below'],
  ] as const)('%s of %d years: %s, %s', (figure, age, size, lies) => {
    const found = rowForAge(figure, age);
    expect(found.row?.size).toBe(size);
    expect(found.lies).toBe(lies);
  });
});
