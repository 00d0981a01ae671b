import { expect, it } from 'vitest';
import { fabricFromRecord } from './fabric-from-record.ts';

it('has its thickness in mm, and null for what was left out', () => {
  expect(fabricFromRecord({ craft: 'knit' })).toEqual({
    craft: 'knit',
    stitch: null,
    thicknessMm: null,
    thicknessU: null,
    wrapsPerInch: null,
    metresPer100g: null,
    fibre: null,
    weightCategory: null,
    stretch: null,
    ribStretch: null,
    growth: null,
    massPerAreaGsm: null,
  });
  expect(fabricFromRecord({ craft: 'knit', thickness: { text: '0.3 cm' } })).toMatchObject({
    thicknessMm: 3,
    thicknessU: null,
  });
});

it('keeps everything that was said', () => {
  const said = {
    craft: 'crochet',
    stitch: 'single-crochet',
    wrapsPerInch: 9,
    metresPer100g: 200,
    fibre: 'wool',
    weightCategory: 4,
    stretch: { across: 0.2, along: 0.1 },
    ribStretch: 0.5,
    growth: { across: 0, along: 0.02 },
  } as const;
  const thickness = { value: 0.6, unit: 'cm', u: 0.05 } as const;
  expect(fabricFromRecord({ ...said, thickness, gramsPerSquareMetre: 300 })).toEqual({
    ...said,
    thicknessMm: 6,
    thicknessU: 0.5,
    massPerAreaGsm: 300,
  });
});
