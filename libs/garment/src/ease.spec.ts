import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { easeInTableTerms, roomOf } from './ease.ts';

const mm = fc.double({ min: 300, max: 2000, noNaN: true });
const thin = fc.double({ min: 0, max: 15, noNaN: true });

describe('ease in the table’s terms', () => {
  /** F 1027, chest 940, t 6, t₀ 3: 1027 − 940 − 4·3 = 75; I = 1027 − 24 = 1003, room 63. */
  it('is 75 for the sweater 1027 round on a chest of 940 in a fabric of 6, with a room of 63', () => {
    expect(easeInTableTerms(1027, 940, 0, 6, 3)).toBe(75);
    expect(roomOf(1027, 940, 0, 6)).toBe(63);
  });

  it('is the flat ease in an ordinary fabric with nothing beneath', () => {
    expect(easeInTableTerms(1015, 940, 0, 3, 3)).toBe(75);
  });

  it('shrinks by 4 for each mm of fabric and by 2π for each mm beneath', () => {
    fc.assert(
      fc.property(mm, mm, thin, thin, (flat, body, s, t) => {
        const ease = easeInTableTerms(flat, body, s, t, 3);
        expect(easeInTableTerms(flat, body, s, t + 1, 3)).toBeCloseTo(ease - 4, 9);
        expect(easeInTableTerms(flat, body, s + 1, t, 3)).toBeCloseTo(ease - 2 * Math.PI, 9);
        expect(easeInTableTerms(flat, body, s, t, 3)).toBeCloseTo(flat - body - 2 * Math.PI * s - 4 * (t - 3), 9);
      }),
    );
  });

  it('is room and four ordinary thicknesses', () => {
    fc.assert(
      fc.property(mm, mm, thin, thin, (flat, body, s, t) => {
        expect(roomOf(flat, body, s, t)).toBeCloseTo(easeInTableTerms(flat, body, s, t, 3) - 12, 9);
      }),
    );
  });
});
