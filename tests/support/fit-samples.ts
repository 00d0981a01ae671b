/** A plain request to start from in tests of the advice, and short ways to read what comes back. Lengths in mm. */
import type { BodyDimension, BodyProfile, Figure } from '#body';
import { resolveFabric, type Fabric, type FabricInput } from '#fabric';
import {
  advise,
  rulesWith,
  type Advice,
  type AssembledDimension,
  type CheckName,
  type Design,
  type FitRequest,
  type MadePiece,
  type WornGarment,
} from '#fit';
import type { Garment, GarmentDimension } from '#garment';

/** An adult invented for the tests, every measure that enters a fit. */
export const WOMAN: Readonly<Partial<Record<BodyDimension, number>>> = {
  'chest-girth': 940,
  'hip-girth': 990,
  'back-waist-length': 437,
  'front-waist-length': 450,
  'back-hip-length': 680,
  'across-back': 404,
  'nape-to-cuff': 743,
  'underarm-length': 432,
  'upper-arm-girth': 280,
  'wrist-girth': 160,
  'hand-girth': 190,
  'scye-depth': 184,
  'scye-girth': 400,
  'shoulder-girth': 1060,
  'neck-base-girth': 371,
  'head-girth': 561,
};

/** A body of these measures, each with u = 1 unless `us` says otherwise; `undefined` leaves one out. */
const MEASURED = { code: 'measured', params: { how: 'home' } } as const;

export function bodyOf(
  measures: Readonly<Partial<Record<BodyDimension, number | undefined>>>,
  figure: Figure = 'woman',
  us: Readonly<Partial<Record<BodyDimension, number>>> = {},
): BodyProfile {
  const known = (Object.entries(measures) as [BodyDimension, number | undefined][]).filter(
    (pair): pair is [BodyDimension, number] => pair[1] !== undefined,
  );
  const values = Object.fromEntries(
    known.map(([name, value]) => [name, { value, u: us[name] ?? 1, how: 'home', from: MEASURED }] as const),
  );
  return { figure, ageYears: null, values, covariance: null, missing: {}, notes: [] };
}

/** The woman with some of her measures otherwise. */
export const womanWith = (measures: Readonly<Partial<Record<BodyDimension, number | undefined>>>): BodyProfile =>
  bodyOf({ ...WOMAN, ...measures });

/** A knitted fabric of this thickness and what else is known of it. */
export const fabricOf = (thicknessMm: number, known: Partial<FabricInput> = {}): Fabric =>
  resolveFabric({
    craft: 'knit',
    stitch: null,
    thicknessMm,
    thicknessU: 0.3,
    wrapsPerInch: null,
    metresPer100g: null,
    fibre: null,
    weightCategory: null,
    stretch: null,
    ribStretch: null,
    growth: null,
    massPerAreaGsm: null,
    ...known,
  });

/** The ease of a garment that fits as classic as the plain request. */
const CLASSIC = { value: 75, u: 0, covariances: {} } as const;

/** A garment that fits, flat, as resolved; u = 5 each; classic ease. */
export function garmentOf(
  measures: Readonly<Partial<Record<GarmentDimension, number>>>,
  rest: Partial<Omit<WornGarment, 'values'>> = {},
): WornGarment {
  const values = Object.fromEntries(
    Object.entries(measures).map(([name, value]) => [
      name,
      { value, u: 5, how: 'home' as const, from: 'measured at home' },
    ]),
  );
  const plain: Omit<Garment, 'measures'> = {
    title: '',
    construction: 'drop-shoulder',
    thicknessMm: 3,
    thicknessU: 0.3,
    layer: null,
    wornStretched: false,
    fits: null,
    neckline: null,
    sleeve: 'long',
    wears: {},
  };
  return { ...plain, ease: CLASSIC, sleeveFrom: 'seam', values, ...rest };
}

export const PLAIN: Design = {
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

/** What may differ from the plain request: parts of the design, and the rest of the request as a whole. */
export type Differs = Partial<Omit<FitRequest, 'design'>> & { readonly design?: Partial<Design> };

/** The woman's classic drop-shoulder pullover in a fabric 3 mm thick, or what differs from it. */
export function requestOf({ design, ...rest }: Differs = {}): FitRequest {
  return {
    body: bodyOf(WOMAN),
    garment: null,
    fabric: fabricOf(3),
    made: [],
    rules: rulesWith({}),
    ...rest,
    design: { ...PLAIN, ...design },
  };
}

export const adviceOn = (differs: Differs = {}): Advice => advise(requestOf(differs));

export const made = (path: string, value: number): MadePiece => {
  const [piece, name] = path.split('/');
  return { piece, name, value } as MadePiece;
};

/** What is read of an advice, with its texts or without. */
interface Readable {
  readonly assembled: readonly Named[];
  readonly pieces: readonly { readonly piece: string; readonly dimensions: readonly Named[] }[];
}
type Named = Pick<AssembledDimension, 'name' | 'value'>;
type DimensionOf<A extends Readable> = A['assembled'][number] | A['pieces'][number]['dimensions'][number];

/** A dimension by its path: `chest-width` of the assembled garment, `sleeve/cap-height` of a piece. */
export function dimension<A extends Readable>(advice: A, path: string): DimensionOf<A> {
  const [first, name] = path.split('/');
  const among = name === undefined ? advice.assembled : advice.pieces.find(({ piece }) => piece === first)?.dimensions;
  const found = among?.find((each) => each.name === (name ?? first));
  if (found === undefined) throw new Error(`The advice has no ${path}.`);
  return found;
}

/** Its value, mm; NaN where there is no advice. */
export const mm = (advice: Readable, path: string): number => dimension(advice, path).value ?? NaN;

export function check<C extends { readonly check: CheckName }>(
  advice: { readonly checks: readonly C[] },
  name: CheckName,
): C {
  return advice.checks.find((each) => each.check === name)!;
}

/** Every dimension with the path it is found by. */
export function everyDimension<A extends Readable>(advice: A): (readonly [path: string, DimensionOf<A>])[] {
  return [
    ...advice.assembled.map((each) => [each.name, each] as const),
    ...advice.pieces.flatMap(({ piece, dimensions }) =>
      dimensions.map((each) => [`${piece}/${each.name}`, each] as const),
    ),
  ];
}
