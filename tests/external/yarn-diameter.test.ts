import { describe, expect, it } from 'vitest';
import { packedDiameterMm, texOf, yarnDiameterMm } from '#fabric';

/**
 * Yarn diameter from mass and length, d = 0.0357 √(tex/(φρ)) mm, and the form that textile handbooks print for a packing
 * of 0.65, d = 4.44 × 10⁻³ √(tex/ρ) cm (from memory). The density of wool is 1.31 g/cm³ (from memory).
 */
describe('yarn diameter', () => {
  it('500 tex, packing 0.65, 1.31 g/cm³: 0.865 mm; a label of 200 m per 100 g of wool says the same', () => {
    expect(packedDiameterMm({ tex: 500, packing: 0.65, density: 1.31 })).toBeCloseTo(0.865, 3);
    expect(texOf(200)).toBe(500);
    expect(yarnDiameterMm(200, 'wool')).toBeCloseTo(0.865, 3);
  });

  /** 0.0357/√0.65 = 0.044280, printed as 0.0444 with another rounding of π: within half a percent. */
  it.each([
    [20, 1.52],
    [500, 1.31],
    [1500, 1.17],
  ])('%d tex at %d g/cm³ agrees with the handbooks’ form', (tex, density) => {
    const handbookMm = 10 * 4.44e-3 * Math.sqrt(tex / density);
    expect(Math.abs(packedDiameterMm({ tex, packing: 0.65, density }) / handbookMm - 1)).toBeLessThan(0.005);
  });

  /** A rod of diameter d holds π/4 d² of section; its fibre, φρ of that, weighs tex grams a kilometre. */
  it('is the diameter of a rod that weighs so much', () => {
    const [packing, density] = [0.5, 1.5];
    const d = packedDiameterMm({ tex: 800, packing, density });
    const gramsPerKm = (Math.PI / 4) * d * d * packing * (density * 1e-3) * 1e6;
    expect(Math.abs(gramsPerKm / 800 - 1)).toBeLessThan(0.002);
  });
});
