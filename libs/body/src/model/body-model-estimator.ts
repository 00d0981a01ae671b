import type { Estimate, Estimates, Estimator, EstimatorInput, KnownValue } from '../estimator.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import { knownLogs, type KnownLogs } from './known-logs.ts';
import { farOff, posteriorOf, priorsOf, type Posterior, type Spread } from './posterior.ts';
import type { BodyNote } from '../note-codes.ts';
import { BEYOND_THE_OLDEST, OLDEST } from './model-notes.ts';
import type { BodyQuestion } from './question-codes.ts';
import { bodyQuestioner, type Question } from './questions.ts';
import { isBodyOutside, isValueOutside, SIZE } from './range.ts';
import type { BodySource } from '../source-codes.ts';
import { zeros } from './zeros.ts';

/** The model gives an estimate of everything. */
type ModelEstimate = Extract<Estimate, { readonly value: number }>;

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
      const sizeOutside = input.known.some(
        ({ name, value }) => SIZE.includes(name) && isValueOutside(coefficients, posterior, name, value),
      );
      const estimates = posterior.rest.map((_, i) => estimateOf(coefficients, input, posterior, i, sizeOutside));
      return {
        estimates,
        covariance: covarianceOf(input.known, posterior, estimates),
        from: sourceOf(coefficients, input),
        notes: notesOn(input, estimates, posterior.distance > farOff(known.at.length) ? questionsOf(input) : []),
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

function estimateOf(
  coefficients: BodyModelCoefficients,
  { ageYears }: EstimatorInput,
  posterior: Posterior,
  i: number,
  sizeOutside: boolean,
): ModelEstimate {
  const { rest, mean, covariance } = posterior;
  const name = coefficients.dimensions[rest[i]!]!;
  const sd = Math.sqrt(covariance[i * rest.length + i]!);
  const value = Math.exp(mean[i]!);
  const [low, high] = [value * Math.exp(-Z90 * sd), value * Math.exp(Z90 * sd)];
  const isOutside =
    sizeOutside ||
    isBodyOutside(coefficients, posterior, name, ageYears) ||
    isValueOutside(coefficients, posterior, name, value);
  return { name, value, u: value * sd, low, high, ...(isOutside && { outsideSurveys: true }) };
}

/** Covariances of the errors in mm²: an estimate leans on the known values, so it shares their errors (gain × error variance). */
function covarianceOf(
  known: readonly KnownValue[],
  { rest, covariance, gain }: Posterior,
  estimates: readonly ModelEstimate[],
): Estimates['covariance'] {
  const k = known.length;
  const m = rest.length;
  const names = [...known, ...estimates].map(({ name }) => name);
  const matrix = names.map(() => zeros(names.length));
  for (let j = 0; j < k; j++) matrix[j]![j] = known[j]!.u ** 2;
  for (let a = 0; a < m; a++) {
    const row = matrix[k + a]!;
    const scale = estimates[a]!.value;
    for (let j = 0; j < k; j++) {
      const { u, value } = known[j]!;
      row[j] = matrix[j]![k + a] = (scale * gain[a * k + j]! * u ** 2) / value;
    }
    for (let b = 0; b <= a; b++)
      row[k + b] = matrix[k + b]![k + a] = scale * estimates[b]!.value * covariance[a * m + b]!;
  }
  return { names, matrix };
}

function sourceOf({ version }: BodyModelCoefficients, { known }: EstimatorInput): BodySource {
  return { code: 'body-model', params: { known: known.map(({ name }) => name), version } };
}

/** The questions about values that contradict one another, and what lies outside the surveys: the body's age, or its size where it may be believed. */
function notesOn(
  { ageYears }: EstimatorInput,
  estimates: readonly ModelEstimate[],
  doubtful: readonly Question[],
): BodyNote[] {
  const notes = doubtful.map(({ code, params }): BodyNote => ({
    code: 'measure-doubtful',
    params: { question: { code, params } as BodyQuestion },
  }));
  if (ageYears !== null && ageYears > OLDEST && estimates.length > 0) return [...notes, BEYOND_THE_OLDEST];
  const names = estimates.flatMap(({ name, outsideSurveys }) => (outsideSurveys ? [name] : []));
  return names.length === 0 || notes.length > 0 ? notes : [...notes, { code: 'body-model-size', params: { names } }];
}
