import { loadBodyModel, type BodyDimension, type BodyMeasure } from '#body';
import { describe, expect, it } from 'vitest';
import { wearerOf } from './wearer.ts';
import { nextToTake } from './next-to-take.ts';
import type { SheetInput } from './sheet-input.ts';

const model = await loadBodyModel();

const fabric: SheetInput['fabric'] = {
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
const design: SheetInput['design'] = {
  silhouette: 'pullover',
  construction: 'drop-shoulder',
  neckline: 'crew',
  length: 'regular',
  customLengthMm: null,
  basis: 'body',
  hem: 'straight',
  ease: { category: 'classic', place: 0.5 },
  layer: null,
  opening: null,
  bandMm: null,
  frontBandMm: null,
  overlapMm: null,
  ribMm: null,
  cuffWidthMm: null,
  neckWidthMm: null,
  frontNeckDepthMm: null,
  backNeckDepthMm: null,
  seamAllowanceMm: 0,
};
/** An adult of about the survey's middle, mm. */
const MIDDLE: readonly (readonly [BodyDimension, number])[] = [
  ['stature', 1630],
  ['chest-girth', 940],
  ['waist-girth', 800],
  ['hip-girth', 1010],
  ['back-waist-length', 400],
  ['across-back', 390],
  ['nape-to-cuff', 760],
  ['scye-depth', 185],
  ['upper-arm-girth', 300],
  ['wrist-girth', 155],
  ['neck-base-girth', 370],
  ['head-girth', 560],
];

function next(names: readonly BodyDimension[], { estimate = true, basis = design.basis } = {}) {
  const measures: BodyMeasure[] = MIDDLE.filter(([name]) => names.includes(name)).map(([name, value]) => ({
    name,
    value,
    how: 'home',
  }));
  const body = { figure: 'woman', ageYears: 40, measures, estimate } as const;
  const input = {
    title: '',
    body,
    garments: [],
    fabric,
    design: { ...design, basis },
    made: [],
    rules: {},
    unit: 'mm',
  } as const;
  return nextToTake(input, wearerOf(input, model));
}

describe('the measure to take next', () => {
  it('is the chest while it was not measured', () => {
    expect(next([])).toMatchObject({ name: 'chest-girth', before: null, after: null });
    expect(next(['stature', 'hip-girth'])?.name).toBe('chest-girth');
  });

  it('is one without which the sheet has gaps, where nothing may be estimated', () => {
    const taken: BodyDimension[] = ['chest-girth'];
    for (let step = next(taken, { estimate: false }); step !== null; step = next(taken, { estimate: false })) {
      expect(taken).not.toContain(step.name);
      taken.push(step.name);
    }
    expect(taken).toContain('nape-to-cuff');
    expect(taken).toContain('neck-base-girth');
  });

  it('makes the sheet surer where what was not measured is estimated', () => {
    const step = next(['stature', 'chest-girth', 'hip-girth']);
    expect(step?.before).toBeGreaterThan(step?.after ?? Infinity);
    expect(['stature', 'chest-girth', 'hip-girth']).not.toContain(step?.name);
  });

  it('is none where a garment decides', () => {
    expect(next(['chest-girth'], { basis: 'garment' })).toBeNull();
  });
});
