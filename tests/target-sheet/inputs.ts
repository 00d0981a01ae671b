import type { SheetInput } from '#target-sheet';

export const meta = { id: '01890a5d-ac96-774b-bcce-b302099a8057', createdAt: '2026-01-01T12:00:00Z' };

type Measures = NonNullable<SheetInput['body']>['measures'];
const measured = (values: Readonly<Record<string, number>>): Measures =>
  Object.entries(values).map(([name, value]) => ({ name, value, how: 'home' }) as Measures[number]);

/** The body of the model's worked examples, with the measures they leave out; mm. */
const woman = measured({
  'chest-girth': 940,
  'hip-girth': 990,
  'back-waist-length': 437,
  'across-back': 404,
  'nape-to-cuff': 743,
  'upper-arm-girth': 280,
  'wrist-girth': 160,
  'scye-depth': 184,
  'neck-base-girth': 371,
  'head-girth': 561,
});

const knit: SheetInput['fabric'] = {
  craft: 'knit',
  stitch: null,
  thicknessMm: 6,
  thicknessU: 0.3,
  wrapsPerInch: null,
  metresPer100g: null,
  fibre: null,
  weightCategory: null,
  stretch: null,
  ribStretch: null,
  growth: null,
  massPerAreaGsm: null,
};

export const exampleInput: SheetInput = {
  title: 'Grey pullover',
  body: { figure: 'woman', ageYears: null, estimate: false, measures: woman },
  garment: null,
  fabric: knit,
  design: {
    silhouette: 'pullover',
    construction: 'drop-shoulder',
    neckline: 'crew',
    length: 'regular',
    customLengthMm: null,
    basis: 'body',
    hem: 'straight',
    ease: { category: 'classic', place: 0.5 },
    easeChangeMm: 0,
    layer: null,
    bandMm: 25,
    frontBandMm: null,
    overlapMm: null,
    ribMm: null,
    neckWidthMm: null,
    frontNeckDepthMm: null,
    backNeckDepthMm: null,
    seamAllowanceMm: 0,
  },
  made: [],
  rules: {},
  unit: 'mm',
};

/** A six-year-old known by age alone, in a knitted fabric that grows. */
export const childInput: SheetInput = {
  ...exampleInput,
  title: 'Small cardigan',
  body: { figure: 'child', ageYears: 6, estimate: true, measures: [] },
  fabric: { ...knit, thicknessMm: 4, growth: { across: 0, along: 0.03 } },
  design: { ...exampleInput.design, silhouette: 'cardigan', construction: 'raglan', bandMm: null },
};
