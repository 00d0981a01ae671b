/** Whoever is known at all gets a whole sheet: every dimension a value, an outline for every piece, every check known. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadBodyModel, publishedSizes, withPublishedSize, type BodyMeasure, type Figure } from '#body';
import { CONSTRUCTIONS, GARMENT_DIMENSIONS } from '#garment';
import { SILHOUETTES } from '#fit';
import { composeSheet, type SheetInput, type TargetSheet } from '#target-sheet';
import { exampleInput, meta } from '../target-sheet/inputs.ts';

const model = await loadBodyModel();

type Wearer = NonNullable<SheetInput['body']>;
type Sweater = SheetInput['garments'][number];

const sheetFor = (body: Wearer | null, garments: readonly Sweater[], design: Partial<SheetInput['design']>) =>
  composeSheet({ ...exampleInput, body, garments, design: { ...exampleInput.design, bandMm: null, ...design } }, meta, {
    model,
  });

function gapsOf({ assembled, pieces, checks }: TargetSheet): string[] {
  return [
    ...assembled.filter(({ value }) => value === null).map(({ name }) => name),
    ...pieces.flatMap(({ piece, outline, dimensions }) => [
      ...(outline === undefined ? [`${piece} has no outline`] : []),
      ...dimensions.filter(({ value }) => value === null).map(({ name }) => `${piece}/${name}`),
    ]),
    ...checks.filter(({ verdict }) => verdict === 'unknown').map(({ check }) => `${check} unknown`),
  ];
}

function isWhole(body: Wearer | null, garments: readonly Sweater[] = []): void {
  for (const construction of CONSTRUCTIONS)
    for (const silhouette of SILHOUETTES) {
      const sheet = sheetFor(body, garments, { construction, silhouette, basis: null, ease: null, length: null });
      expect(gapsOf(sheet), `${silhouette}, ${construction}`).toEqual([]);
    }
}

const adult = (figure: Figure, ageYears: number | null, measures: readonly BodyMeasure[]): Wearer => ({
  figure,
  ageYears,
  estimate: true,
  measures,
});
const taken = (name: BodyMeasure['name'], value: number): BodyMeasure => ({ name, value, how: 'home' });

describe('a whole sheet', () => {
  it('for an adult of any age, height and weight', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Figure>('woman', 'man', 'unsaid'),
        fc.integer({ min: 17, max: 90 }),
        fc.integer({ min: 1400, max: 2050 }),
        fc.integer({ min: 35, max: 220 }),
        (figure, age, stature, kg) => {
          isWhole(adult(figure, age, [taken('stature', stature), taken('weight', kg * 1000)]));
        },
      ),
      { numRuns: 40 },
    );
  });

  it('for an adult of any chest', () => {
    for (const figure of ['woman', 'man', 'unsaid'] as const)
      for (const chest of [700, 850, 1000, 1200, 1400, 1650])
        isWhole(adult(figure, null, [taken('chest-girth', chest)]));
  });

  const tables = publishedSizes().filter(({ measures }) => measures.some(({ name }) => name === 'chest-girth'));
  it.each(tables.flatMap(({ id, rows }) => rows.map(({ size }) => [id, size] as const)))('for %s %s', (table, size) => {
    const nobody = { figure: 'unsaid', ageYears: null, measures: [] } as const;
    isWhole({ ...withPublishedSize(nobody, { table, size }), estimate: true });
  });

  it('for an adult known by age alone, and none of one of whom nothing is known', () => {
    isWhole(adult('woman', 40, []));
    const { assembled } = sheetFor(adult('woman', null, []), [], {});
    expect(assembled.filter(({ name, value }) => name.endsWith('-width') && value !== null)).toEqual([]);
  });

  it('from a favourite sweater with any one width', () => {
    const WIDTHS = {
      'chest-width': 500,
      'hem-width': 500,
      'sleeve-top-width': 180,
      'cuff-width': 100,
      'cross-back-width': 400,
    } as const;
    for (const name of GARMENT_DIMENSIONS.filter((each) => each in WIDTHS))
      for (const construction of CONSTRUCTIONS) {
        const value = WIDTHS[name as keyof typeof WIDTHS];
        isWhole(null, [sweater({ construction, measures: [{ name, value, how: 'home' }] })]);
      }
  });
});

function sweater(rest: Partial<Sweater>): Sweater {
  return {
    title: '',
    construction: 'drop-shoulder',
    measures: [],
    thicknessMm: 4,
    thicknessU: 0.3,
    layer: null,
    wornStretched: false,
    fits: null,
    neckline: null,
    sleeve: 'long',
    wears: {},
    basis: false,
    ...rest,
  };
}
