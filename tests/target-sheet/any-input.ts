import fc from 'fast-check';
import {
  BASES,
  EASE_CATEGORIES,
  HEMS,
  LENGTHS,
  NECKLINES,
  OPENING_PLACES,
  SILHOUETTES,
  type DesignWish,
  type EaseWish,
  type MadePiece,
} from '#fit';
import { CONSTRUCTIONS, GARMENT_DIMENSIONS, LAYER_SLEEVES, type GarmentDimension, type Layer } from '#garment';
import { SHEET_UNITS, type SheetInput } from '#target-sheet';
import { WOMAN } from '../support/fit-samples.ts';
import { knit } from './inputs.ts';

type Body = NonNullable<SheetInput['body']>;
type Measure = Body['measures'][number];

/** A number to the thousandth: nobody measures 10⁻³⁰⁰ mm. */
const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(min * 1000), max: Math.floor(max * 1000) }).map((thousandths) => thousandths / 1000);
const orNull = <T>(of: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(of, { nil: null, freq: 2 });

/** Someone of any size and of uneven proportions, some measures left out. */
const adult: fc.Arbitrary<Body> = fc
  .record({
    size: between(0.8, 1.7),
    uneven: fc.array(between(0.9, 1.1), { minLength: 16, maxLength: 16 }),
    left: fc.array(fc.boolean(), { minLength: 16, maxLength: 16 }),
    all: fc.boolean(),
    figure: fc.constantFrom('woman' as const, 'man' as const, 'unsaid' as const),
    estimate: fc.boolean(),
  })
  .map(({ size, uneven, left, all, figure, estimate }) => ({
    figure,
    ageYears: null,
    estimate,
    measures: Object.entries(WOMAN).flatMap(([name, value], index) => {
      const girth = name.endsWith('-girth') && name !== 'head-girth' && name !== 'hand-girth';
      const scaled = value * (girth ? size : (2 + size) / 3) * (uneven[index] ?? 1);
      return all || left[index] ? [{ name, value: scaled, how: 'home' } as Measure] : [];
    }),
  }));

const child: fc.Arbitrary<Body> = fc
  .record({ baby: fc.boolean(), age: between(0, 1), chest: orNull(between(0.9, 1.2)) })
  .map(({ baby, age, chest }) => ({
    figure: baby ? 'baby' : 'child',
    ageYears: baby ? 0.25 + 1.7 * age : 2 + 13 * age,
    estimate: true,
    measures: chest === null ? [] : [{ name: 'chest-girth', value: (baby ? 450 : 640) * chest, how: 'home' }],
  }));

const layer: fc.Arbitrary<Layer> = fc.record({
  thicknessMm: between(0.5, 6),
  u: fc.constant(0.3),
  sleeves: fc.constantFrom(...LAYER_SLEEVES),
});

/** Flat widths and lengths of a garment that fits an adult, mm. */
const WORN: Readonly<Record<GarmentDimension, number>> = {
  'chest-width': 520,
  'hem-width': 500,
  'shoulder-to-hem': 620,
  'back-neck-depth': 20,
  'front-neck-depth': 80,
  'neck-width': 160,
  'cross-back-width': 420,
  'armhole-depth': 230,
  'sleeve-top-width': 190,
  'sleeve-length': 500,
  'cuff-width': 100,
};

const garment: fc.Arbitrary<SheetInput['garments'][number]> = fc
  .record({
    construction: fc.constantFrom(...CONSTRUCTIONS),
    names: fc.subarray(GARMENT_DIMENSIONS.filter((name) => name !== 'chest-width')),
    uneven: between(0.85, 1.25),
    thicknessMm: between(1, 6),
    layer: orNull(layer),
  })
  .map(({ construction, names, uneven, thicknessMm, layer }) => ({
    construction,
    measures: (['chest-width', ...names] as const).map((name) => ({ name, value: WORN[name] * uneven, how: 'home' })),
    thicknessMm,
    thicknessU: 0.3,
    layer,
    title: '',
    wornStretched: false,
    fits: null,
    neckline: null,
    sleeve: 'long',
    wears: {},
    basis: false,
  }));

const ease: fc.Arbitrary<EaseWish> = fc.oneof(
  fc.record({ category: fc.constantFrom(...EASE_CATEGORIES), place: between(0, 1) }),
  fc.record({ mm: between(-100, 250) }),
);
/** What a garment that fits can be asked for. */
const easeOfGarments: fc.Arbitrary<EaseWish> = fc.record({
  as: fc.constant('garment' as const),
  changeMm: between(-40, 60),
});

const design: fc.Arbitrary<DesignWish> = fc.record({
  silhouette: fc.constantFrom(...SILHOUETTES),
  construction: fc.constantFrom(...CONSTRUCTIONS),
  neckline: fc.constantFrom(...NECKLINES),
  length: orNull(fc.constantFrom(...LENGTHS.filter((length) => length !== 'as-garment'))),
  customLengthMm: between(350, 900),
  basis: orNull(fc.constantFrom(...BASES)),
  hem: orNull(fc.constantFrom(...HEMS)),
  ease: orNull(fc.oneof({ weight: 2, arbitrary: ease }, { weight: 1, arbitrary: easeOfGarments })),
  layer: orNull(layer),
  opening: orNull(fc.record({ at: fc.constantFrom(...OPENING_PLACES), lengthMm: orNull(between(20, 150)) })),
  bandMm: orNull(between(0, 50)),
  frontBandMm: orNull(between(15, 60)),
  overlapMm: orNull(between(0, 60)),
  ribMm: orNull(between(0, 80)),
  cuffWidthMm: orNull(between(70, 200)),
  neckWidthMm: orNull(between(100, 260)),
  frontNeckDepthMm: orNull(between(30, 200)),
  backNeckDepthMm: orNull(between(5, 40)),
  seamAllowanceMm: fc.constantFrom(0, 0, 5, 10),
});

const growth = between(-0.1, 0.15);
const fabric: fc.Arbitrary<SheetInput['fabric']> = fc
  .record({
    thickness: between(1.5, 12),
    growth: orNull(fc.record({ across: growth, along: growth })),
    stretch: orNull(between(0, 0.9)),
  })
  .map(({ thickness, growth, stretch }) => ({
    ...knit,
    thicknessMm: thickness,
    growth,
    stretch: stretch === null ? null : { across: stretch, along: stretch / 2 },
  }));

/** A back or a sleeve that is finished already. */
const made: fc.Arbitrary<readonly MadePiece[]> = fc.oneof(
  { weight: 4, arbitrary: fc.constant([]) },
  between(0.9, 1.1).map((share): MadePiece[] => [{ piece: 'back', name: 'width', value: 520 * share }]),
  between(0.9, 1.1).map((share): MadePiece[] => [{ piece: 'sleeve', name: 'cuff-width', value: 190 * share }]),
);

function withoutGarment(design: DesignWish): DesignWish {
  const { ease } = design;
  return { ...design, basis: 'body', ease: ease !== null && 'as' in ease ? null : ease };
}

/** Any input that the product takes, sensible or not: any size, design, fabric and unit, with measures missing. */
export const anyInput: fc.Arbitrary<SheetInput> = fc
  .record({
    title: fc.string({ unit: 'grapheme', maxLength: 60 }),
    body: fc.oneof({ weight: 3, arbitrary: adult }, { weight: 1, arbitrary: child }),
    garments: fc.array(garment, { maxLength: 3 }),
    fabric,
    design,
    made,
    unit: fc.constantFrom(...SHEET_UNITS),
  })
  .map((input) => ({
    ...input,
    made: input.design.silhouette === 'vest' ? input.made.filter(({ piece }) => piece !== 'sleeve') : input.made,
    design: input.garments.length === 0 ? withoutGarment(input.design) : input.design,
    rules: {},
  }));

/** What a maker would ask: bands deep enough to work, the neck left to the rules, an adult's garment for an adult. */
export const sensibleInput: fc.Arbitrary<SheetInput> = anyInput.map((input) => {
  const small = input.body?.figure === 'child' || input.body?.figure === 'baby';
  const { bandMm, ribMm, customLengthMm, length } = input.design;
  return {
    ...input,
    garments: small ? [] : input.garments,
    made: small ? [] : input.made,
    design: {
      ...(small ? withoutGarment(input.design) : input.design),
      bandMm: bandMm === null ? null : Math.min(Math.max(bandMm, 10), small ? 25 : 50),
      ribMm: small ? null : ribMm,
      customLengthMm: small || length !== 'custom' ? null : customLengthMm,
      length: small && length === 'custom' ? 'regular' : length,
      neckWidthMm: null,
      frontNeckDepthMm: null,
      backNeckDepthMm: null,
    },
  };
});
