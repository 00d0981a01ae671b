import type { BodyDimension } from '../body-dimension.ts';
import type { EstimatorInput } from '../estimator.ts';
import { bodySize } from '../model/body-size.ts';
import type { BodyModelCoefficients } from '../model/coefficients.ts';
import { fixedPoint } from '../model/fixed-point.ts';
import { condition } from '../model/gaussian.ts';
import { knownLogs, type KnownLogs } from '../model/known-logs.ts';
import { mixtureMoments, sharesOf } from '../model/mixture.ts';
import { contradictionOf, priorsOf, sexesOf, type Sex, type Spread } from '../model/posterior.ts';
import type { BodyPrior, Prior } from '../model/prior.ts';
import { isBodyOutside, isValueOutside, SIZE } from '../model/range.ts';
import { fitSize, FREE } from '../model/size-fit.ts';
import { compareWith, type Comparison } from './compare.ts';
import { inMillimetres, type PosteriorInMillimetres } from './in-millimetres.ts';
import type { HiddenNumber, LogGaussian, Observation } from './observation.ts';
import { posteriorOf, updatedState } from './update.ts';
import { weighAgainstEachOther, weighAgainstTape, type Contradiction } from './weigh.ts';

/** All that is known of an adult: `known` by a tape, a scale or a table; `observations` by whatever else depends on the body. */
export interface EvidenceInput extends Pick<EstimatorInput, 'figure' | 'ageYears' | 'known'> {
  readonly hidden: readonly HiddenNumber[];
  readonly observations: readonly Observation[];
  /** The dimensions that are asked for, where not all are; those that observations rest on are answered too. */
  readonly wanted?: readonly BodyDimension[];
}

/** One body from all that is known: every dimension, measured ones included, and the hidden numbers, with the covariance of all of them. mm; weight in g. */
export interface BodyFromEvidence extends PosteriorInMillimetres {
  /** Dimensions of which nobody of this size or age was surveyed. */
  readonly outsideSurveys: readonly BodyDimension[];
  /** Each observation beside what the tape alone leads to expect, before any question is answered. */
  readonly comparisons: readonly Comparison[];
  readonly contradictions: readonly Contradiction[];
}

/**
 * The posterior of a body given tape and observations together. Observations that contradict the tape, or one another, count as `weigh.ts` says.
 * @throws DomainError from `knownLogs` for values no measure can have; `unknown-term` for an observation of something without a prior.
 */
export function bodyFromEvidence(
  coefficients: BodyModelCoefficients,
  spread: Spread = 'anyone',
): (input: EvidenceInput) => BodyFromEvidence {
  const priors = priorsOf(coefficients, spread);
  const { dimensions } = coefficients;
  return (input) => {
    const known = knownLogs(dimensions, input.known);
    const asked = askedFor(dimensions, input);
    const parts = sexesOf(input.figure).map((sex) => ({
      sex,
      ...posteriorOfSex(asked, priors[sex], known, input),
    }));
    const shares = sharesOf(parts);
    const likelier = parts.reduce((best, part) => (part.logDensity > best.logDensity ? part : best));
    const { names } = likelier.posterior;
    const moments = mixtureMoments(
      shares,
      parts.map(({ logDensity, posterior: { mean, covariance } }) => ({ logDensity, mean, covariance })),
    );
    const inMm = inMillimetres({ names, dimensions: asked.length, ...moments });
    const weights: Record<Sex, number> = { woman: 0, man: 0 };
    parts.forEach(({ sex }, index) => (weights[sex] = shares[index]!));
    const body = { weights, b: parts.reduce((sum, { b }, index) => sum + shares[index]! * b, 0) };
    const isOutside = (name: BodyDimension) => isValueOutside(coefficients, body, name, inMm.values[name]!.value);
    const sizeOutside = SIZE.some(isOutside);
    return {
      ...inMm,
      outsideSurveys: asked
        .map(({ name }) => name)
        .filter((name) => sizeOutside || isOutside(name) || isBodyOutside(coefficients, body, name, input.ageYears)),
      comparisons: likelier.comparisons,
      contradictions: likelier.contradictions,
    };
  };
}

/** A dimension that is answered, and its place among all. */
interface Asked {
  readonly name: BodyDimension;
  readonly place: number;
}

/** Stature and weight tell how heavy the body is, and are always among them. */
function askedFor(dimensions: readonly BodyDimension[], { wanted, known, observations }: EvidenceInput): Asked[] {
  const all = dimensions.map((name, place) => ({ name, place }));
  if (wanted === undefined) return all;
  const names = new Set<string>([...wanted, ...SIZE, ...known.map(({ name }) => name)]);
  for (const one of observations) for (const name of Object.keys(one.dimensions)) names.add(name);
  return all.filter(({ name }) => names.has(name));
}

function posteriorOfSex(
  asked: readonly Asked[],
  prior: Prior,
  known: KnownLogs,
  { ageYears, hidden, observations }: EvidenceInput,
) {
  const names = asked.map(({ name }) => name);
  const rest = asked.map(({ place }) => place);
  const places = Array.from({ length: prior.n }, (_, place) => place);
  const [stature, weight] = [names.indexOf('stature'), names.indexOf('weight')];
  const fit = fitSize(prior, ageYears, known);
  const contradiction = contradictionOf(fit.distance, known.at.length - 1);
  /** The body by the tape alone. */
  const taped = (around: BodyPrior): LogGaussian => {
    const { mean, covariance } = condition(around, known.at, known.logs, known.noise, rest);
    return {
      names,
      mean,
      covariance: contradiction === 1 ? covariance : covariance.map((cell) => cell * contradiction),
    };
  };
  const free = taped(withFreeSize(prior.at(ageYears, fit.b, places)));
  const { comparisons, logDensity } = compareWith(free, hidden, observations);
  const besideTape =
    known.at.length === 0
      ? { hidden, observations, contradictions: [] }
      : weighAgainstTape(hidden, observations, comparisons);
  const first = updatedState(free, besideTape.hidden, besideTape.observations);
  const weighed = weighAgainstEachOther(besideTape.hidden, besideTape.observations, first.innovations);
  let near = first.mean;
  const { b, state } = fixedPoint(fit.b, (at) => {
    const body = taped(prior.at(ageYears, at, places));
    const state = updatedState(body, weighed.hidden, weighed.observations, near);
    near = state.mean;
    return { ...bodySize(Math.exp(near[stature]!), Math.exp(near[weight]!)), state };
  });
  return {
    b,
    posterior: posteriorOf(state),
    comparisons,
    contradictions: [...besideTape.contradictions, ...weighed.contradictions],
    logDensity: fit.logDensity + logDensity,
  };
}

/** How heavy a body is contradicts nothing: b may be anything before the tape. */
function withFreeSize(prior: BodyPrior): BodyPrior {
  const { slopes } = prior.bmi;
  const covariance = prior.covariance.map(
    (value, cell) => value + FREE ** 2 * slopes[Math.floor(cell / prior.n)]! * slopes[cell % prior.n]!,
  );
  return { ...prior, covariance };
}
