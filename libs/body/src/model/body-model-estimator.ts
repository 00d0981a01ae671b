import type { BodyDimension } from '../body-dimension.ts';
import type { Estimate, Estimates, Estimator, EstimatorInput, KnownValue } from '../estimator.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import { knownLogs, type KnownLogs } from './known-logs.ts';
import { posteriorOf, priorsOf, type Posterior, type Spread } from './posterior.ts';
import type { BodyNote } from '../note-codes.ts';
import { BEYOND_THE_OLDEST, OLDEST, YOUNGEST } from './model-notes.ts';
import type { BodyQuestion } from './question-codes.ts';
import { bodyQuestioner, type Question } from './questions.ts';
import { outside, type Side } from './range.ts';
import type { BodySource } from '../source-codes.ts';
import { zeros } from './zeros.ts';

/** Outside the surveys' range in one of these, nothing of the model is for this body. */
const SIZE: readonly BodyDimension[] = [
  'stature',
  'weight',
  'chest-girth',
  'underbust-girth',
  'waist-girth',
  'hip-girth',
];

/** Another value outside the range keeps back only the estimates it moves by more than this part of their spread (assumed). */
const MOVES = 0.1;

/** 95th percentile of the standard normal distribution: half of a 90 % interval. */
const Z90 = 1.6449;

/**
 * The body model as an `Estimator`: a joint log-normal distribution per sex, conditioned on what is known with its error. The `value` is the median, so that a
 * wider spread does not move it; `u` is the standard deviation of the logarithm times the median (to first order the estimate's own); `low` and `high` are
 * the 5th and 95th percentile. Pure; about 0.1 ms.
 *
 * @param spread for whom: the product uses `anyone`; the others are for comparison with survey rows.
 * @throws DomainError from `knownLogs` for values no measure can have.
 */
export function bodyModelEstimator(coefficients: BodyModelCoefficients, spread: Spread = 'anyone'): Estimator {
  const priors = priorsOf(coefficients, spread);
  const questionsOf = bodyQuestioner(coefficients);
  return {
    estimate(input: EstimatorInput): Estimates {
      const known = knownLogs(coefficients.dimensions, input.known);
      const posterior = posteriorOf(priors, input, known, restOf(coefficients, input, known));
      const strange = strangeOf(coefficients, input.known, posterior);
      const estimates = posterior.rest.map((_, i) => estimateOf(coefficients, input, known, strange, posterior, i));
      return {
        estimates,
        covariance: covarianceOf(input.known, posterior, estimates),
        from: sourceOf(coefficients, input),
        notes: notesOn(input, estimates, posterior.contradiction > 1 ? questionsOf(input) : []),
      };
    },
  };
}

/** The places of those to estimate: wanted, and not known. */
function restOf({ dimensions }: BodyModelCoefficients, { wanted }: EstimatorInput, { at }: KnownLogs): number[] {
  const rest: number[] = [];
  dimensions.forEach((name, place) => {
    if (!at.includes(place) && (wanted === undefined || wanted.includes(name))) rest.push(place);
  });
  return rest;
}

/** The j-th known value, which lies outside the surveys' range. */
interface Strange {
  readonly j: number;
  readonly name: BodyDimension;
  readonly side: Side;
}

function strangeOf(
  coefficients: BodyModelCoefficients,
  known: readonly KnownValue[],
  { weights }: Posterior,
): readonly Strange[] {
  const strange: Strange[] = [];
  known.forEach(({ name, value }, j) => {
    const side = outside(coefficients, weights, name, value);
    if (side !== null) strange.push({ j, name, side });
  });
  return strange;
}

function estimateOf(
  coefficients: BodyModelCoefficients,
  { ageYears }: EstimatorInput,
  known: KnownLogs,
  strange: readonly Strange[],
  posterior: Posterior,
  i: number,
): Estimate {
  const { rest, mean, covariance, weights } = posterior;
  const name = coefficients.dimensions[rest[i]!]!;
  if (ageYears !== null && ageYears < YOUNGEST) {
    return { name, missing: { code: 'too-young', params: { youngest: YOUNGEST } } };
  }
  const sd = Math.sqrt(covariance[i * rest.length + i]!);
  const cause = strange.find((one) => SIZE.includes(one.name) || moveBy(posterior, known, i, one.j) > MOVES * sd);
  if (cause !== undefined) {
    const { name: known, side } = cause;
    return { name, missing: { code: 'known-value-outside-surveys', params: { name: known, side } } };
  }
  const value = Math.exp(mean[i]!);
  const side = outside(coefficients, weights, name, value);
  if (side !== null) {
    return { name, missing: { code: 'estimate-outside-surveys', params: { side } } };
  }
  return { name, value, u: value * sd, low: value * Math.exp(-Z90 * sd), high: value * Math.exp(Z90 * sd) };
}

/** How far the j-th known value moves the i-th estimate, as a logarithm. */
const moveBy = ({ gain, priorMean }: Posterior, { at, logs }: KnownLogs, i: number, j: number) =>
  Math.abs(gain[i * at.length + j]! * (logs[j]! - priorMean[at[j]!]!));

/** Covariances of the errors in mm²: an estimate leans on the known values, so it shares their errors (gain × error variance). */
function covarianceOf(
  known: readonly KnownValue[],
  { rest, covariance, gain }: Posterior,
  estimates: readonly Estimate[],
): Estimates['covariance'] {
  const k = known.length;
  const m = rest.length;
  const names = known.map(({ name }) => name);
  /** Places of the estimates among the rest, and how many mm each moves for its logarithm. */
  const places: number[] = [];
  const scales: number[] = [];
  estimates.forEach((one, i) => {
    if (!('value' in one)) return;
    names.push(one.name);
    places.push(i);
    scales.push(one.value);
  });
  const matrix = names.map(() => zeros(names.length));
  for (let j = 0; j < k; j++) matrix[j]![j] = known[j]!.u ** 2;
  for (let a = 0; a < places.length; a++) {
    const row = matrix[k + a]!;
    for (let j = 0; j < k; j++) {
      const { u, value } = known[j]!;
      row[j] = matrix[j]![k + a] = (scales[a]! * gain[places[a]! * k + j]! * u ** 2) / value;
    }
    for (let b = 0; b <= a; b++)
      row[k + b] = matrix[k + b]![k + a] = scales[a]! * scales[b]! * covariance[places[a]! * m + places[b]!]!;
  }
  return { names, matrix };
}

function sourceOf({ version }: BodyModelCoefficients, { known }: EstimatorInput): BodySource {
  return { code: 'body-model', params: { known: known.map(({ name }) => name), version } };
}

/** The questions about values that contradict one another, and the age of a body older than anyone surveyed. */
function notesOn(
  { ageYears }: EstimatorInput,
  estimates: readonly Estimate[],
  doubtful: readonly Question[],
): BodyNote[] {
  const notes = doubtful.map(({ code, params }): BodyNote => ({
    code: 'measure-doubtful',
    params: { question: { code, params } as BodyQuestion },
  }));
  const old = ageYears !== null && ageYears > OLDEST && estimates.some((one) => 'value' in one);
  return old ? [...notes, BEYOND_THE_OLDEST] : notes;
}
