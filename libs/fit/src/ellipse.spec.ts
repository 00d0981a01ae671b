import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { halfEllipse } from './ellipse.ts';

/** Half of an ellipse's edge by chords, with no formula but Pythagoras; short of the arc by less than 1e-6 of it. */
function byChords(width: number, depth: number): number {
  const steps = 4000;
  const at = (k: number): readonly [number, number] => {
    const angle = (Math.PI * k) / steps;
    return [(width / 2) * Math.cos(angle), depth * Math.sin(angle)];
  };
  let sum = 0;
  for (let k = 0; k < steps; k++) {
    const [[x, y], [nextX, nextY]] = [at(k), at(k + 1)];
    sum += Math.hypot(nextX - x, nextY - y);
  }
  return sum;
}

const size = fc.double({ min: 1, max: 500, noNaN: true });

describe('half an ellipse', () => {
  it('is half a circle where it is as deep as half its width', () => {
    expect(halfEllipse(200, 100)).toBeCloseTo(100 * Math.PI, 9);
  });

  /** Flat, the true length is the width; the approximation gives (π/4)(3 − √3) = 0.9958 of it, its worst. */
  it('is nearly its width where it has no depth', () => {
    expect(halfEllipse(200, 0)).toBeCloseTo(200 * (Math.PI / 4) * (3 - Math.sqrt(3)), 9);
  });

  it('is within 0.42 % of the drawn curve, and of a neck’s shape within 0.05 %', () => {
    fc.assert(
      fc.property(size, size, (width, depth) => {
        const drawn = byChords(width, depth);
        const off = Math.abs(halfEllipse(width, depth) - drawn) / drawn;
        const flatness = Math.min(width / 2 / depth, depth / (width / 2));
        expect(off).toBeLessThan(flatness > 0.25 ? 5e-4 : 4.3e-3);
      }),
      { numRuns: 60 },
    );
  });

  it('grows with width and with depth', () => {
    fc.assert(
      fc.property(size, size, size, (width, depth, more) => {
        expect(halfEllipse(width + more, depth)).toBeGreaterThan(halfEllipse(width, depth));
        expect(halfEllipse(width, depth + more)).toBeGreaterThan(halfEllipse(width, depth));
      }),
    );
  });
});
