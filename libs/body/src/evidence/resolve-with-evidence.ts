import type { BodyDimension } from '../body-dimension.ts';
import { bodyProblems } from '../body-problems.ts';
import type { Body } from '../body.ts';
import type { BodyProfile, ProfileValue } from '../body-profile.ts';
import type { BodyModel } from '../model/load-body-model.ts';
import { childProfile } from '../child/child-profile.ts';
import { measuredValues, missingFrom } from '../profile-values.ts';
import { resolveBody } from '../resolve-body.ts';
import type { BodySource } from '../source-codes.ts';
import { compareWith, type Comparison } from './compare.ts';
import { inMillimetres, type PosteriorInMillimetres } from './in-millimetres.ts';
import { logGaussianOf } from './log-gaussian-of.ts';
import type { HiddenNumber, LogGaussian, Observation } from './observation.ts';
import { updateByObservations } from './update.ts';
import { weighAgainstEachOther, weighAgainstTape, type Contradiction } from './weigh.ts';

/** What else than a tape tells of a body. */
export interface Evidence {
  readonly hidden: readonly HiddenNumber[];
  readonly observations: readonly Observation[];
}

/** `wanted`: what is asked for, where not all of a body is needed. `without`: the body without the evidence, where it was resolved already. */
interface EvidenceOptions {
  readonly wanted?: readonly BodyDimension[];
  readonly without?: BodyProfile;
}

/** A body from tape and evidence together. */
export interface ResolvedWithEvidence {
  /** Every value is the posterior's, those that were measured too. */
  readonly profile: BodyProfile;
  /** Dimensions and hidden numbers with the covariance of all of them. */
  readonly joint: PosteriorInMillimetres;
  readonly comparisons: readonly Comparison[];
  readonly contradictions: readonly Contradiction[];
}

/**
 * A body ready for the arithmetic of fit, from all that is known of it. An adult's prior is the body model's; a child's or a baby's its size's row, by whatever is
 * known of it, else by the chest of its sweater.
 * @throws DomainError as `resolveBody` does; `unknown-term` where an observation rests on a dimension that a child has no value of.
 */
export function resolveWithEvidence(
  body: Body,
  evidence: Evidence,
  model: BodyModel,
  {
    wanted,
    without = resolveBody(body, { estimate: true, estimator: model, ...(wanted && { wanted }) }),
  }: EvidenceOptions = {},
): ResolvedWithEvidence {
  const [problem] = bodyProblems(body);
  if (problem !== undefined) throw problem;
  const { figure } = body;
  const sources = [...new Set(evidence.observations.map(({ source }) => source))];
  const from: BodySource = {
    code: 'evidence',
    params: { known: body.measures.map(({ name }) => name), sources, version: model.coefficients.version },
  };
  if (figure === 'child' || figure === 'baby') {
    const isKnown = Object.keys(without.values).length > 0;
    const start = isKnown ? without : childBySweater(figure, evidence);
    const { joint, ...rest } = childFromEvidence(body, logGaussianOf(start), evidence);
    return { profile: profileOf(start, joint, from, measuredValues(body), []), joint, ...rest };
  }
  const measured = measuredValues(body);
  const known = body.measures.map(({ name }) => ({ name, value: measured[name]!.value, u: measured[name]!.u }));
  const found = model.fromEvidence({ figure, ageYears: body.ageYears, known, ...evidence, ...(wanted && { wanted }) });
  const { outsideSurveys, comparisons, contradictions, ...joint } = found;
  return { profile: profileOf(without, joint, from, measured, outsideSurveys), joint, comparisons, contradictions };
}

/** A child of whom nothing else is known has about the size that the chest of its sweater leads to: within a tenth (assumed). */
function childBySweater(figure: 'child' | 'baby', { hidden, observations }: Evidence): BodyProfile {
  const chests = observations.flatMap((one) => {
    const { 'chest-girth': times, ...others } = one.dimensions;
    if (times === undefined || Object.keys(others).length > 0) return [];
    const eases = hidden.map(({ name, mean }) => {
      const term = one.hidden[name];
      return typeof term === 'number' ? term * mean : 0;
    });
    return [(one.observed - one.constant - eases.reduce((sum, ease) => sum + ease, 0)) / times];
  });
  const chest = chests[0];
  if (chest === undefined || !(chest > 0)) return childProfile(figure, null, {});
  return childProfile(figure, null, {
    'chest-girth': { value: chest, u: chest / 10, how: 'estimated', from: { code: 'assumed', params: {} } },
  });
}

function childFromEvidence({ measures }: Body, prior: LogGaussian, { hidden, observations }: Evidence) {
  const { comparisons } = compareWith(prior, hidden, observations);
  const besideTape =
    measures.length === 0
      ? { hidden, observations, contradictions: [] }
      : weighAgainstTape(hidden, observations, comparisons);
  const { innovations } = updateByObservations(prior, besideTape.hidden, besideTape.observations);
  const weighed = weighAgainstEachOther(besideTape.hidden, besideTape.observations, innovations);
  return {
    joint: inMillimetres(updateByObservations(prior, weighed.hidden, weighed.observations)),
    comparisons,
    contradictions: [...besideTape.contradictions, ...weighed.contradictions],
  };
}

/** The posterior as a profile: what was measured keeps how it was; all else says what it is from. */
function profileOf(
  without: BodyProfile,
  { names, values, matrix }: PosteriorInMillimetres,
  from: BodySource,
  measured: BodyProfile['values'],
  outsideSurveys: readonly BodyDimension[],
): BodyProfile {
  const dimensions = names.filter((name): name is BodyDimension => name in without.values || name in measured);
  const places = dimensions.map((name) => names.indexOf(name));
  const profileValues = Object.fromEntries(
    dimensions.map((name): [BodyDimension, ProfileValue] => {
      const before = measured[name] ?? { ...without.values[name]!, from };
      const { outsideSurveys: marked, ...rest } = before;
      const isMarked = marked ?? (measured[name] === undefined && outsideSurveys.includes(name));
      return [name, { ...rest, ...values[name]!, ...(isMarked && { outsideSurveys: true }) }];
    }),
  );
  return {
    ...without,
    values: profileValues,
    covariance: { names: dimensions, matrix: places.map((row) => places.map((column) => matrix[row]![column]!)) },
    missing: missingFrom(profileValues, (name) => without.missing[name]!),
  };
}
