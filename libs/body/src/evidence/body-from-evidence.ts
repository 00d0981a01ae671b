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
import { updateByObservations } from './update.ts';
import { weighAgainstEachOther, weighAgainstTape, type Contradiction } from './weigh.ts';

/** All that is known of an adult: `known` by a tape, a scale or a table; `observations` by whatever else depends on the body. */
export interface EvidenceInput extends Pick<EstimatorInput, 'figure' | 'ageYears' | 'known'> {
  readonly hidden: readonly HiddenNumber[];
  readonly observations: readonly Observation[];
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
    const parts = sexesOf(input.figure).map((sex) => ({
      sex,
      ...posteriorOfSex(dimensions, priors[sex], known, input),
    }));
    const shares = sharesOf(parts);
    const likelier = parts.reduce((best, part) => (part.logDensity > best.logDensity ? part : best));
    const { names } = likelier.posterior;
    const moments = mixtureMoments(
      shares,
      parts.map(({ logDensity, posterior: { mean, covariance } }) => ({ logDensity, mean, covariance })),
    );
    const inMm = inMillimetres({ names, dimensions: dimensions.length, ...moments });
    const weights: Record<Sex, number> = { woman: 0, man: 0 };
    parts.forEach(({ sex }, index) => (weights[sex] = shares[index]!));
    const body = { weights, b: parts.reduce((sum, { b }, index) => sum + shares[index]! * b, 0) };
    const isOutside = (name: BodyDimension) => isValueOutside(coefficients, body, name, inMm.values[name]!.value);
    const sizeOutside = SIZE.some(isOutside);
    return {
      ...inMm,
      outsideSurveys: dimensions.filter(
        (name) => sizeOutside || isOutside(name) || isBodyOutside(coefficients, body, name, input.ageYears),
      ),
      comparisons: likelier.comparisons,
      contradictions: likelier.contradictions,
    };
  };
}

function posteriorOfSex(
  names: readonly BodyDimension[],
  prior: Prior,
  known: KnownLogs,
  { ageYears, hidden, observations }: EvidenceInput,
) {
  const places = names.map((_, place) => place);
  const [stature, weight] = [names.indexOf('stature'), names.indexOf('weight')];
  const fit = fitSize(prior, ageYears, known);
  const contradiction = contradictionOf(fit.distance, known.at.length - 1);
  /** The body by the tape alone. */
  const taped = (around: BodyPrior): LogGaussian => {
    const { mean, covariance } = condition(around, known.at, known.logs, known.noise, places);
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
  const { innovations } = updateByObservations(free, besideTape.hidden, besideTape.observations);
  const weighed = weighAgainstEachOther(besideTape.hidden, besideTape.observations, innovations);
  const { b, posterior } = fixedPoint(fit.b, (at) => {
    const posterior = updateByObservations(taped(prior.at(ageYears, at, places)), weighed.hidden, weighed.observations);
    const { b } = bodySize(Math.exp(posterior.mean[stature]!), Math.exp(posterior.mean[weight]!));
    return { b, posterior };
  });
  return {
    b,
    posterior,
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
