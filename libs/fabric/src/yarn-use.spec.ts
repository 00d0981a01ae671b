import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FabricInput } from './fabric.ts';
import { yarnEnough } from './yarn-enough.ts';
import { yarnUse } from './yarn-use.ts';

const input: FabricInput = {
  craft: 'knit',
  stitch: null,
  thicknessMm: 3,
  thicknessU: null,
  wrapsPerInch: null,
  metresPer100g: null,
  fibre: null,
  weightCategory: null,
  stretch: null,
  ribStretch: null,
  growth: null,
  massPerAreaGsm: null,
};
const use = (more: Partial<FabricInput>, area = 1e6) => yarnUse(area, { ...input, ...more }, { thicknessMm: 3 });

describe('the yarn that a square metre takes', () => {
  it('is what the swatch weighs, and as long as the label says', () => {
    const { area, massG, lengthM, from } = use({ massPerAreaGsm: 450, metresPer100g: 200, weightCategory: 5 });
    expect({ area, from: from.code }).toEqual({ area: 1, from: 'swatch-weight' });
    expect(massG.value).toBe(450);
    // 5 % of the swatch and 3 % of the area.
    expect(massG.u).toBeCloseTo(450 * Math.hypot(0.05, 0.03), 9);
    expect(lengthM!.value).toBe(900);
  });

  /** 500 tex: 20 × √500 = 447 g. */
  it('is by the label what is usual, a third more where it is crocheted', () => {
    const knitted = use({ metresPer100g: 200 });
    expect(knitted.from).toEqual({ code: 'yarn-on-label', params: { metresPer100g: 200 } });
    expect(knitted.massG.value).toBeCloseTo(447.2, 1);
    expect(use({ metresPer100g: 200, craft: 'crochet' }).massG.value).toBeCloseTo(596.3, 1);
  });

  it('is rough by the category or by the wraps, and rougher by the thickness alone', () => {
    expect(use({ weightCategory: 4 }).massG.value).toBeCloseTo(447.2, 1);
    expect(use({ weightCategory: 4 }).from.code).toBe('usual-yarn');
    expect(use({ wrapsPerInch: 10 }).from).toMatchObject({ code: 'usual-yarn', params: { category: 4 } });
    const thickness = use({});
    expect(thickness.from.code).toBe('usual-density');
    expect(thickness.massG.value).toBe(540);
    expect(thickness.lengthM).toBeNull();
    expect(thickness.massG.u / thickness.massG.value).toBeGreaterThan(0.3);
  });

  it('grows with the area, and less is known the less is said', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3_000_000 }), fc.integer({ min: 0, max: 7 }), (area, weightCategory) => {
        const one = use({ weightCategory }, area);
        expect(use({ weightCategory }, 2 * area).massG.value).toBeCloseTo(2 * one.massG.value, 6);
        const swatch = use({ weightCategory, massPerAreaGsm: 400 }, area);
        expect(swatch.massG.u / swatch.massG.value).toBeLessThan(one.massG.u / one.massG.value);
      }),
    );
  });
});

it('is enough or not, with the chance of running out', () => {
  const yarn = { massG: { value: 500, u: 50 } };
  expect(yarnEnough(500, yarn)).toEqual({ leftG: 0, chanceOfRunningOut: 0.5 });
  expect(yarnEnough(600, yarn).chanceOfRunningOut).toBeCloseTo(0.0228, 4);
  expect(yarnEnough(400, yarn)).toMatchObject({ leftG: -100 });
});
