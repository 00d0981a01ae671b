import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rangeText, tapeText } from './length-text.ts';

describe('how far a length may be rounded, as text', () => {
  it.each([
    [{ value: 513.5, low: 507, high: 526 }, 'cm', '50.7 to 52.6'],
    [{ value: 123.4, low: 121.6, high: 123.4 }, 'cm', '12.2 to 12.3'],
    [{ value: 122.6, low: 121.6, high: 122.6 }, 'cm', '12.2 to 12.3'],
    [{ value: 122.6, low: 122.6, high: 122.6 }, 'cm', '–'],
    [{ value: 513.5, low: 507, high: 526 }, 'in', '20 to 20 5/8'],
  ] as const)('of %j in %s is %s', (length, unit, text) => {
    expect(rangeText(length, unit)).toBe(text);
  });

  it('holds the length as it is told', () => {
    const length = fc
      .tuple(fc.double({ min: 10, max: 2000, noNaN: true }), fc.nat(30), fc.nat(30))
      .map(([value, down, up]) => ({ value, low: value - down / 4, high: value + up / 4 }));
    fc.assert(
      fc.property(length, (each) => {
        const [first = '', last] = rangeText(each, 'cm').split(' to ').map(Number);
        if (last === undefined) return;
        expect(Number(tapeText(each.value, 'cm'))).toBeGreaterThanOrEqual(Number(first));
        expect(Number(tapeText(each.value, 'cm'))).toBeLessThanOrEqual(last);
      }),
    );
  });
});
