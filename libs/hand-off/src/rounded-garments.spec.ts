import { composeSheet, type SheetInput } from '#target-sheet';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mapSheet } from './map-sheet.ts';

const measures = {
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
} as const;

/** The adult of the model's worked examples, in a garment of the given construction. */
const input = (construction: SheetInput['design']['construction'], easeMm: number): SheetInput => ({
  title: 'Worked example',
  body: {
    figure: 'woman',
    ageYears: null,
    estimate: false,
    measures: Object.entries(measures).map(([name, value]) => ({
      name: name as keyof typeof measures,
      value,
      how: 'home',
    })),
  },
  garments: [],
  fabric: {
    craft: 'knit',
    stitch: null,
    thicknessMm: 6,
    thicknessU: null,
    wrapsPerInch: null,
    metresPer100g: null,
    fibre: null,
    weightCategory: null,
    stretch: null,
    ribStretch: null,
    growth: null,
    massPerAreaGsm: null,
  },
  design: {
    silhouette: 'pullover',
    construction,
    neckline: 'crew',
    length: 'regular',
    customLengthMm: null,
    basis: 'body',
    hem: 'straight',
    ease: { mm: easeMm },
    layer: null,
    opening: null,
    bandMm: 25,
    frontBandMm: null,
    overlapMm: null,
    ribMm: null,
    cuffWidthMm: null,
    neckWidthMm: null,
    frontNeckDepthMm: null,
    backNeckDepthMm: null,
    seamAllowanceMm: 0,
  },
  made: [],
  rules: {},
  unit: 'mm',
});

/** Every dimension of a garment, rounded, by our names; 0 for one it does not have. */
function rounded(construction: SheetInput['design']['construction'], easeMm: number, step: number, unit: 'cm' | 'in') {
  const sheet = composeSheet(input(construction, easeMm), { id: 'x', createdAt: '2026-01-01T00:00:00Z' });
  const mapped = mapSheet(sheet, { unit, roundingStep: step, format: 'flat', names: {}, required: [] });
  if (!mapped.ok) throw new Error('nothing is required');
  const payload = mapped.payload as Record<string, number>;
  return (name: string): number => payload[name] ?? 0;
}

const garment = fc.record({
  construction: fc.constantFrom('drop-shoulder' as const, 'squared-drop' as const, 'set-in' as const),
  ease: fc.integer({ min: 0, max: 200 }),
  rounding: fc.constantFrom([0.125, 'in'] as const, [0.5, 'in'] as const, [0.5, 'cm'] as const, [1, 'cm'] as const),
});

describe('a garment rounded dimension by dimension', () => {
  it('still fits together', () => {
    fc.assert(
      fc.property(garment, ({ construction, ease, rounding: [step, unit] }) => {
        const value = rounded(construction, ease, step, unit);
        // Back and front are seamed to each other.
        expect(value('front/width')).toBe(value('back/width'));
        expect(value('front/body-to-underarm')).toBe(value('back/body-to-underarm'));
        // The shoulder line lies above the underarm by armhole and shoulder fall (model, section 6).
        expect(value('back/body-to-underarm') + value('back/armhole-depth') + value('back/shoulder-fall')).toBeCloseTo(
          value('back/shoulder-to-hem'),
          9,
        );
        // A drop shoulder's sleeve is sewn along twice the armhole's depth.
        if (construction !== 'set-in') expect(value('sleeve/sleeve-top-width')).toBe(2 * value('back/armhole-depth'));
        // From nape to cuff: half the way across and the sleeve, to within what one of them was rounded.
        const way = value('back/cross-back-width') / 2 + value('sleeve/sleeve-length');
        expect(Math.abs(way - value('assembled/neck-to-cuff'))).toBeLessThanOrEqual(step);
      }),
      { numRuns: 60 },
    );
  });
});
