import {
  BODY_DIMENSIONS,
  resolveBody,
  resolveWithEvidence,
  type Body,
  type BodyDimension,
  type BodyModel,
  type BodyProfile,
  type Comparison,
  type Contradiction,
} from '#body';
import { easeInTableTerms, type GarmentProfile } from '#garment';
import { kappaOf, rulesAtSize } from '../design/scale.ts';
import type { Rules } from '../design/rules.ts';
import { easePrior } from './ease-prior.ts';
import type { Sweater, WearerSoFar } from './sweater.ts';
import { sweaterEvidence } from './sweater-evidence.ts';
import type { GarmentEase, WornGarment } from './worn-garment.ts';

/** A wearer by all that is known of her. */
export interface ResolvedWearer {
  readonly body: BodyProfile;
  /** In the order in which they were given. */
  readonly garments: readonly WornGarment[];
  /** Each measure of a garment beside what the rest leads to expect. */
  readonly comparisons: readonly Comparison[];
  /** What has to be asked. */
  readonly contradictions: readonly Contradiction[];
}

/** `estimate` false: what was not measured stays unknown. */
export type WearerBody = Body & { readonly estimate: boolean };

const NOBODY: WearerBody = { figure: 'unsaid', ageYears: null, measures: [], estimate: true };

/**
 * One body from all that is known: tape, size, age, and the garments that fit. Without a model an adult's garments tell nothing but their ease, beside a chest that was
 * measured. `wanted`: the dimensions that are asked for; what a garment rests on is answered too.
 * @throws DomainError as `resolveBody` does
 */
export function resolveWearer(
  given: WearerBody | null,
  garments: readonly GarmentProfile[],
  rules: Rules,
  model: BodyModel | null,
  wanted: readonly BodyDimension[],
): ResolvedWearer {
  const body = given ?? NOBODY;
  const estimate = body.estimate && isKnown(body, garments);
  const alone = resolveBody(body, { estimate, wanted, ...(model && { estimator: model }) });
  if (garments.length === 0) return { body: alone, garments: [], comparisons: [], contradictions: [] };
  const wearer = soFar(alone, garments, rules);
  const names = garmentNames(garments);
  const sweaters = garments.map((garment, place): Sweater => ({ ...garment, name: names[place]! }));
  if (model === null) {
    const worn = sweaters.map((sweater) => ({ ...sweater, ease: easeByChest(sweater, alone, wearer.sized) }));
    return { body: alone, garments: worn, comparisons: [], contradictions: [] };
  }
  const evidence = sweaters.map((sweater) => sweaterEvidence(sweater, wearer));
  const { profile, joint, ...compared } = resolveWithEvidence(
    body,
    {
      hidden: evidence.map(({ ease }) => ease),
      observations: evidence.flatMap(({ observations }) => observations),
    },
    model,
    { wanted, ...(estimate && { without: alone }) },
  );
  const easeOf = (name: string): GarmentEase => {
    const row = joint.matrix[joint.names.indexOf(name)]!;
    const covariances = Object.fromEntries(joint.names.map((other, place) => [other, row[place]!]));
    return { ...joint.values[name]!, covariances };
  };
  const worn = sweaters.map((sweater) => ({ ...sweater, ease: easeOf(sweater.name) }));
  return { body: estimate ? profile : measuredAlone(profile, alone), garments: worn, ...compared };
}

/** A figure alone says nothing of the body: nothing is estimated of it. */
const isKnown = ({ measures, ageYears }: Body, garments: readonly GarmentProfile[]): boolean =>
  measures.length > 0 || ageYears !== null || garments.length > 0;

/** What each garment is named by in what is said of it: what it is called, or its number among them. A number, or a dimension of the body, is no name. */
export function garmentNames(garments: readonly Pick<GarmentProfile, 'title'>[]): readonly string[] {
  const titles = garments.map(({ title }) => title);
  const isName = (title: string) =>
    !/^\d*$/.test(title) &&
    !(BODY_DIMENSIONS as readonly string[]).includes(title) &&
    titles.indexOf(title) === titles.lastIndexOf(title);
  return titles.map((title, place) => (isName(title) ? title : String(place + 1)));
}

/** The wearer without her sweaters; a child of whom nothing else is known is as large as its first sweater lets expect. */
function soFar(body: BodyProfile, garments: readonly GarmentProfile[], rules: Rules): WearerSoFar {
  const known = kappaOf(body, rules);
  const width = garments.map(({ values }) => values['chest-width']?.value).find((value) => value !== undefined);
  const bySweater = width === undefined ? 1 : (2 * width - rules['sweater-ease']) / rules['adult-chest'];
  const kappa = Number.isNaN(known) ? Math.min(1, Math.max(bySweater, 0.3)) : known;
  return {
    sized: rulesAtSize(rules, kappa),
    backWaist: body.values['back-waist-length']?.value ?? null,
    neckBase: body.values['neck-base-girth']?.value ?? null,
  };
}

/** The ease that a chest which is known leaves, else what sweaters that fit have. */
function easeByChest(sweater: Sweater, { values }: BodyProfile, sized: Rules): GarmentEase {
  const { mean, sd } = easePrior(sweater, sized);
  const [width, chest] = [sweater.values['chest-width'], values['chest-girth']];
  if (width === undefined || chest === undefined) return { value: mean, u: sd, covariances: {} };
  const layer = sweater.layer?.thicknessMm ?? 0;
  const ordinary = sized['ordinary-thickness'];
  return {
    value: easeInTableTerms(2 * width.value, chest.value, layer, sweater.thicknessMm, ordinary),
    u: Math.hypot(2 * width.u, chest.u),
    covariances: { 'chest-girth': -(chest.u ** 2) },
  };
}

/** A body whose other measures are not to be estimated. */
function measuredAlone(profile: BodyProfile, { values, missing }: BodyProfile): BodyProfile {
  const measured = Object.keys(values) as BodyDimension[];
  return { ...profile, values: Object.fromEntries(measured.map((name) => [name, profile.values[name]!])), missing };
}
