import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatFromInner, flatFromMid, girths, innerFromFlat, midFromFlat, outerFromInner } from './girth.ts';

const girth = fc.double({ min: 100, max: 2000, noNaN: true });
const thickness = fc.double({ min: 0, max: 20, noNaN: true });

describe('girths', () => {
  /** t = 6, W = 480: F = 960, I = 960 − 24, M = 936 + 6π = 954.850, O = 936 + 12π = 973.699. */
  it('are those of a sweater 480 wide in a fabric of 6', () => {
    const four = girths({ flatMm: 960, thicknessMm: 6 });
    expect(four).toMatchObject({ flatMm: 960, innerMm: 936 });
    expect(four.midMm).toBeCloseTo(954.8496, 4);
    expect(four.outerMm).toBeCloseTo(973.6991, 4);
  });

  it('come out the same from whichever is known', () => {
    fc.assert(
      fc.property(girth, thickness, (innerMm, thicknessMm) => {
        const four = girths({ innerMm, thicknessMm });
        for (const again of [girths({ midMm: four.midMm, thicknessMm }), girths({ flatMm: four.flatMm, thicknessMm })])
          for (const name of ['innerMm', 'midMm', 'outerMm', 'flatMm'] as const)
            expect(again[name]).toBeCloseTo(four[name], 9);
      }),
    );
  });

  it('lie in the order inner, mid, flat, outer, mid half way between inner and outer', () => {
    fc.assert(
      fc.property(girth, fc.double({ min: 0.1, max: 20, noNaN: true }), (innerMm, thicknessMm) => {
        const { midMm, outerMm, flatMm } = girths({ innerMm, thicknessMm });
        expect([innerMm, midMm, flatMm, outerMm]).toEqual([innerMm, midMm, flatMm, outerMm].toSorted((a, b) => a - b));
        expect(midMm).toBeCloseTo((innerMm + outerMm) / 2, 9);
      }),
    );
  });

  it('each relation has its inverse', () => {
    fc.assert(
      fc.property(girth, thickness, (mm, t) => {
        expect(innerFromFlat(flatFromInner(mm, t), t)).toBeCloseTo(mm, 9);
        expect(flatFromMid(midFromFlat(mm, t), t)).toBeCloseTo(mm, 9);
        expect(midFromFlat(flatFromInner(mm, t), t)).toBeCloseTo(mm + Math.PI * t, 9);
        expect(outerFromInner(mm, t) - mm).toBeCloseTo(2 * Math.PI * t, 9);
      }),
    );
  });

  it('show why thick yarn disappoints: 432 flat on a bust of 838 leaves 14 at t = 3 and −2 at t = 7', () => {
    expect(innerFromFlat(864, 3) - 838).toBe(14);
    expect(innerFromFlat(864, 7) - 838).toBe(-2);
  });
});
