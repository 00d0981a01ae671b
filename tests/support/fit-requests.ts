/**
 * Random requests for advice, for laws that hold of all of them. `fitRequest` is the kind that makers send: bodies of
 * any figure and build, a garment of their size, any design, pieces made about as planned. `strangeRequest` is whatever
 * the inputs' limits let in. Lengths in mm.
 */
import fc, { type Arbitrary } from 'fast-check';
import { BODY_DIMENSIONS, FIGURES, humanLimits, type BodyDimension, type BodyProfile, type Figure } from '#body';
import { CRAFTS, resolveFabric, type Fabric } from '#fabric';
import {
  advise,
  BASES,
  EASE_CATEGORIES,
  HEMS,
  LENGTHS,
  MADE_MEASURES,
  NECKLINES,
  OPENING_PLACES,
  rulesWith,
  SILHOUETTES,
  type Design,
  type EaseChoice,
  type FitRequest,
  type WornGarment,
} from '#fit';
import {
  CONSTRUCTIONS,
  GARMENT_DIMENSIONS,
  LAYER_SLEEVES,
  REGIONS,
  WEARS,
  type GarmentDimension,
  type Layer,
} from '#garment';
import { bodyOf, made, mm, WOMAN } from './fit-samples.ts';

const between = (min: number, max: number): Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** Mostly there. */
const often = <T>(some: Arbitrary<T>): Arbitrary<T | undefined> => fc.option(some, { nil: undefined, freq: 12 });
/** Mostly left to the rules. */
const seldom = <T>(some: Arbitrary<T>): Arbitrary<T | null> =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, some);

const GIRTHS = Object.keys(WOMAN).filter((name) => name.endsWith('girth')) as BodyDimension[];
const LENGTHS_OF_BODY = Object.keys(WOMAN).filter((name) => !name.endsWith('girth')) as BodyDimension[];
/** Heads and hands vary less than chests do. */
const STEADY: readonly BodyDimension[] = ['head-girth', 'hand-girth', 'neck-base-girth', 'wrist-girth'];

/** Girth and length of a figure as shares of the sample woman's, roughly from a newborn's to the largest published size. */
const BUILDS: Readonly<Record<Figure, readonly [girth: Arbitrary<number>, length: Arbitrary<number>]>> = {
  woman: [between(0.75, 1.75), between(0.85, 1.2)],
  man: [between(0.85, 1.7), between(0.95, 1.3)],
  unsaid: [between(0.75, 1.75), between(0.85, 1.3)],
  child: [between(0.55, 0.95), between(0.45, 0.95)],
  baby: [between(0.38, 0.58), between(0.28, 0.48)],
};

const PERSONAL = Object.fromEntries(Object.keys(WOMAN).map((name) => [name, often(between(0.92, 1.08))]));
const UNCERTAIN = Object.fromEntries(Object.keys(WOMAN).map((name) => [name, fc.constantFrom(0, 1, 5, 10, 15)]));

function builtBody(figure: Figure): Arbitrary<BodyProfile> {
  const [girth, length] = BUILDS[figure];
  return fc
    .record({ girth, length, personal: fc.record(PERSONAL), us: fc.record(UNCERTAIN) })
    .map(({ girth, length, personal, us }) => {
      const sized = (name: BodyDimension): number => {
        if (LENGTHS_OF_BODY.includes(name)) return length;
        return STEADY.includes(name) ? Math.sqrt(girth) : girth;
      };
      const measures = [...GIRTHS, ...LENGTHS_OF_BODY].map((name) => {
        const own = personal[name];
        return [name, own === undefined ? undefined : WOMAN[name]! * sized(name) * own] as const;
      });
      return bodyOf(Object.fromEntries(measures), figure, us);
    });
}

/** Estimates share error: a covariance of one common cause, each value leaning on it by its own share. */
function withCovariance(body: BodyProfile, shares: readonly number[]): BodyProfile {
  const names = Object.keys(body.values) as BodyDimension[];
  const lean = (i: number): number => shares[i % shares.length]!;
  const u = (i: number): number => body.values[names[i]!]!.u;
  const matrix = names.map((_, i) => names.map((__, j) => u(i) * u(j) * (i === j ? 1 : lean(i) * lean(j))));
  return { ...body, covariance: { names, matrix } };
}

/** A body of any figure and build, some of its measures missing, now and then with correlated errors. */
const body: Arbitrary<BodyProfile> = fc
  .constantFrom(...FIGURES)
  .chain((figure) =>
    fc.tuple(builtBody(figure), seldom(fc.array(between(-0.95, 0.95), { minLength: 3, maxLength: 7 }))),
  )
  .map(([built, shares]) => (shares === null ? built : withCovariance(built, shares)));

/** A body of which everything that enters a fit is known. */
export const wholeBody: Arbitrary<BodyProfile> = body.filter(
  ({ values }) => Object.keys(values).length === Object.keys(WOMAN).length,
);

const layer: Arbitrary<Layer | null> = seldom(
  fc.record({ thicknessMm: between(0, 8), u: fc.constantFrom(0, 0.3), sleeves: fc.constantFrom(...LAYER_SLEEVES) }),
);

const fabric: Arbitrary<Fabric> = fc
  .record({
    craft: fc.constantFrom(...CRAFTS),
    thicknessMm: between(1, 12),
    thicknessU: fc.constantFrom(0, 0.3, 1),
    stretch: seldom(fc.record({ across: between(0, 1), along: between(0, 0.5) })),
    ribStretch: seldom(between(0, 1.5)),
    growth: seldom(fc.record({ across: between(-0.1, 0.1), along: between(-0.1, 0.1) })),
    massPerAreaGsm: seldom(between(100, 1500)),
  })
  .map((known) =>
    resolveFabric({
      ...known,
      stitch: null,
      wrapsPerInch: null,
      metresPer100g: null,
      fibre: null,
      weightCategory: null,
    }),
  );

const ease: Arbitrary<EaseChoice> = fc.oneof(
  fc.record({
    category: fc.constantFrom(...EASE_CATEGORIES),
    place: fc.oneof(fc.constantFrom(0, 0.5, 1), between(0, 1)),
  }),
  fc.record({ mm: between(-75, 250) }),
  fc.record({ as: fc.constant('garment' as const), changeMm: fc.oneof(fc.constant(0), between(-40, 80)) }),
);

/** A design whose own lengths are shares of what its wearer's would be; `size` is the wearer's, 1 for an adult. */
function designFor(size: number): Arbitrary<Design> {
  const length = (min: number, max: number): Arbitrary<number> => between(min * size, max * size);
  return fc
    .record({
      silhouette: fc.constantFrom(...SILHOUETTES),
      construction: fc.constantFrom(...CONSTRUCTIONS),
      neckline: fc.constantFrom(...NECKLINES),
      length: fc.constantFrom(...LENGTHS),
      customLengthMm: length(350, 900),
      basis: fc.constantFrom('body' as const, 'body' as const, ...BASES),
      hem: seldom(fc.constantFrom(...HEMS)),
      ease,
      layer,
      opening: seldom(fc.record({ at: fc.constantFrom(...OPENING_PLACES), lengthMm: seldom(length(20, 120)) })),
      bandMm: seldom(length(5, 60)),
      frontBandMm: seldom(length(10, 60)),
      overlapMm: seldom(length(0, 60)),
      ribMm: seldom(length(10, 90)),
      cuffWidthMm: seldom(length(80, 180)),
      neckWidthMm: seldom(length(110, 220)),
      frontNeckDepthMm: seldom(length(30, 200)),
      backNeckDepthMm: seldom(length(10, 30)),
      seamAllowanceMm: fc.constantFrom(0, 0, 5),
    })
    .map((design) => (design.length === 'custom' ? design : { ...design, customLengthMm: null }));
}

/** Flat measures of a garment as shares of its chest width, roughly. */
const PROPORTIONS: Readonly<Record<GarmentDimension, number>> = {
  'chest-width': 1,
  'hem-width': 1,
  'shoulder-to-hem': 1.2,
  'back-neck-depth': 0.045,
  'front-neck-depth': 0.17,
  'neck-width': 0.32,
  'cross-back-width': 0.8,
  'armhole-depth': 0.45,
  'sleeve-top-width': 0.36,
  'sleeve-length': 1.1,
  'cuff-width': 0.2,
};

function garmentFor(chestWidth: number): Arbitrary<WornGarment> {
  const own = Object.fromEntries(
    GARMENT_DIMENSIONS.map((name) => [name, name === 'chest-width' ? between(0.92, 1.15) : often(between(0.9, 1.12))]),
  );
  return fc
    .record({
      own: fc.record(own),
      u: fc.constantFrom(0, 3, 5),
      construction: fc.constantFrom(...CONSTRUCTIONS),
      sleeveFrom: fc.constantFrom('seam' as const, 'centre-back' as const),
      thicknessMm: between(1, 10),
      thicknessU: fc.constantFrom(0, 0.3),
      layer,
      wornStretched: fc.boolean(),
      neckline: seldom(fc.constantFrom(...NECKLINES)),
      wears: fc.record(Object.fromEntries(REGIONS.map((region) => [region, fc.constantFrom(...WEARS)])), {
        requiredKeys: [],
      }),
      ease: fc.record({ value: between(-40, 200), u: fc.constantFrom(0, 15, 60), covariances: fc.constant({}) }),
    })
    .map(({ own, u, ...rest }) => {
      const known = Object.entries(own).filter(([, share]) => share !== undefined) as [GarmentDimension, number][];
      const values = known.map(([name, share]) => [
        name,
        { value: PROPORTIONS[name] * share * chestWidth, u, how: 'home' as const, from: 'measured at home' },
      ]);
      return { ...rest, title: '', fits: null, sleeve: 'long', values: Object.fromEntries(values) };
    });
}

/** A design without what a garment does not give. */
function possibleWith(garment: WornGarment | null, design: Design): Design {
  const kept = design.basis === 'body' ? null : garment;
  return {
    ...design,
    basis: kept === null ? 'body' : design.basis,
    length: design.length === 'as-garment' && !kept?.values['shoulder-to-hem'] ? 'regular' : design.length,
    ease: garment === null && 'as' in design.ease ? { mm: design.ease.changeMm } : design.ease,
  };
}

/** A request as a maker might send it, before any piece is made. */
export const plannedRequest: Arbitrary<FitRequest> = body.chain((wearer) => {
  const chest = wearer.values['chest-girth']?.value ?? 900;
  return fc
    .record({
      garment: garmentFor(chest / 2 + 35),
      fabric,
      design: designFor(Math.min(1, chest / 900)),
      nobody: fc.integer({ min: 0, max: 3 }),
    })
    .map(({ garment, fabric, design, nobody }) => ({
      body: design.basis === 'garment' && nobody === 0 ? null : wearer,
      garment,
      fabric,
      design: possibleWith(garment, design),
      made: [],
      rules: rulesWith({}),
    }));
});

/** Measures of pieces that the advice can take in and has planned, each made so many times as large. */
function withMade(request: FitRequest, sizes: readonly (readonly [path: string, share: number])[]): FitRequest {
  const planned = advise(request);
  const has = (path: string): boolean => {
    const [piece, name] = path.split('/');
    return planned.pieces.some((one) => one.piece === piece && one.dimensions.some((each) => each.name === name));
  };
  const pieces = sizes
    .filter(([path]) => has(path) && Number.isFinite(mm(planned, path)))
    .map(([path, share]) => made(path, share * mm(planned, path)));
  return { ...request, made: pieces };
}

/** Some measures of finished pieces; of those that fix the same number only the first. */
const madeSizes = fc.uniqueArray(fc.tuple(fc.constantFrom(...MADE_MEASURES), between(0.93, 1.07)), {
  maxLength: 4,
  selector: ([path]) => path.replace(/^(?:left-|right-)?front\/(?!width)|^back\/|^(?:left|right)-/, ''),
});

/** A request as a maker might send it, with none, one or several pieces made. */
export const fitRequest: Arbitrary<FitRequest> = fc
  .tuple(plannedRequest, seldom(madeSizes))
  .map(([request, sizes]) => (sizes === null ? request : withMade(request, sizes)));

const strangeBody: Arbitrary<BodyProfile> = fc.constantFrom(...FIGURES).chain((figure) => {
  const measures = Object.fromEntries(
    BODY_DIMENSIONS.map((name) => [name, often(between(...humanLimits(figure, name)))]),
  );
  const us = Object.fromEntries(BODY_DIMENSIONS.map((name) => [name, between(0, 100)]));
  return fc
    .record({ measures: fc.record(measures), us: fc.record(us) })
    .map(({ measures, us }) => bodyOf(measures, figure, us));
});

const anyLength = fc.oneof(fc.constant(null), fc.constantFrom(0, 3000), between(0, 3000));

const strangeDesign: Arbitrary<Design> = fc
  .record({
    silhouette: fc.constantFrom(...SILHOUETTES),
    construction: fc.constantFrom(...CONSTRUCTIONS),
    neckline: fc.constantFrom(...NECKLINES),
    length: fc.constantFrom(...LENGTHS),
    customLengthMm: between(0, 3000),
    basis: fc.constantFrom(...BASES),
    hem: seldom(fc.constantFrom(...HEMS)),
    ease: fc.oneof(
      ease,
      fc.record({ mm: between(-1000, 2000) }),
      fc.record({ as: fc.constant('garment' as const), changeMm: between(-1000, 2000) }),
    ),
    layer: fc.option(
      fc.record({ thicknessMm: between(0, 40), u: between(0, 20), sleeves: fc.constantFrom(...LAYER_SLEEVES) }),
    ),
    opening: fc.option(fc.record({ at: fc.constantFrom(...OPENING_PLACES), lengthMm: anyLength })),
    bandMm: anyLength,
    frontBandMm: anyLength,
    overlapMm: anyLength,
    ribMm: anyLength,
    cuffWidthMm: anyLength,
    neckWidthMm: anyLength,
    frontNeckDepthMm: anyLength,
    backNeckDepthMm: anyLength,
    seamAllowanceMm: between(0, 3000),
  })
  .map((design) => (design.length === 'custom' ? design : { ...design, customLengthMm: null }));

const strangeFabric: Arbitrary<Fabric> = fc
  .record({
    craft: fc.constantFrom(...CRAFTS),
    thicknessMm: between(0.2, 40),
    thicknessU: between(0, 20),
    stretch: fc.option(fc.record({ across: between(0, 5), along: between(0, 5) })),
    ribStretch: fc.option(between(0, 5)),
    growth: fc.option(fc.record({ across: between(-0.5, 1), along: between(-0.5, 1) })),
    massPerAreaGsm: fc.option(between(10, 10_000)),
  })
  .map((known) =>
    resolveFabric({
      ...known,
      stitch: null,
      wrapsPerInch: null,
      metresPer100g: null,
      fibre: null,
      weightCategory: null,
    }),
  );

/** Whatever the limits of the inputs let in, sensible or not; some of it is refused. */
export const strangeRequest: Arbitrary<FitRequest> = fc
  .record({
    body: fc.option(strangeBody, { freq: 8 }),
    chestWidth: between(60, 3000),
    fabric: strangeFabric,
    design: strangeDesign,
    made: fc.array(fc.tuple(fc.constantFrom(...MADE_MEASURES), between(0, 3000)), { maxLength: 3 }),
  })
  .chain(({ chestWidth, ...rest }) => fc.option(garmentFor(chestWidth)).map((garment) => ({ ...rest, garment })))
  .map((request) => ({ ...request, design: possibleWith(request.garment, request.design) }))
  .map((request) => ({
    ...request,
    made: request.made.map(([path, value]) => made(path, value)),
    rules: rulesWith({}),
  }));
