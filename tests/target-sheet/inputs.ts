import type { SheetInput } from '#target-sheet';
import { PLAIN, WOMAN } from '../support/fit-samples.ts';

export const meta = { id: '01890a5d-ac96-774b-bcce-b302099a8057', createdAt: '2026-01-01T12:00:00Z' };

type Measures = NonNullable<SheetInput['body']>['measures'];

/** The woman of the fit samples, as measured at home. */
const woman = Object.entries(WOMAN).map(([name, value]) => ({ name, value, how: 'home' })) as Measures;

/** Knitted, 6 mm thick, of which nothing else is known. */
export const knit: SheetInput['fabric'] = {
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
  garments: [],
  fabric: knit,
  design: { ...PLAIN, bandMm: 25 },
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
