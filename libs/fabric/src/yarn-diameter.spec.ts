import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FIBRES } from './fibre.ts';
import { packedDiameterMm, texOf, yarnDiameterMm } from './yarn-diameter.ts';

describe('yarn diameter', () => {
  it('is 0.865 mm for 500 tex of wool packed to 0.65', () => {
    expect(packedDiameterMm({ tex: 500, packing: 0.65, density: 1.31 })).toBeCloseTo(0.865, 3);
    expect(texOf(200)).toBe(500);
    expect(yarnDiameterMm(200, 'wool')).toBe(packedDiameterMm({ tex: 500, packing: 0.65, density: 1.31 }));
  });

  it('weighs what it should: a round rod of that diameter and packed density has the yarn’s mass per length', () => {
    const tex = fc.double({ min: 20, max: 10_000, noNaN: true });
    fc.assert(
      fc.property(
        tex,
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 1.6, noNaN: true }),
        (t, packing, density) => {
          const d = packedDiameterMm({ tex: t, packing, density });
          /** mm² × g/mm³ × 10⁶ mm in a km; 0.0357 is 2√(10⁻³/π) = 0.035682 rounded, so d is 0.05 % large. */
          const gramsPerKm = (Math.PI / 4) * d ** 2 * packing * density * 1e-3 * 1e6;
          expect(Math.abs(gramsPerKm / t - 1)).toBeLessThan(0.0011);
        },
      ),
    );
  });

  it('shrinks with the length that 100 g gives, for every fibre', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FIBRES), fc.integer({ min: 20, max: 1000 }), (fibre, metres) => {
        expect(yarnDiameterMm(metres + 1, fibre)).toBeLessThan(yarnDiameterMm(metres, fibre));
      }),
    );
  });

  it('is larger for a lighter fibre', () => {
    expect(yarnDiameterMm(200, 'acrylic')).toBeGreaterThan(yarnDiameterMm(200, 'cotton'));
  });
});
