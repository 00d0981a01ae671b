import type { JointPrior } from './joint-prior.ts';

/** A number with its standard uncertainty, mm (weight: g). */
interface Uncertain {
  readonly value: number;
  readonly u: number;
}

/** Dimensions and hidden numbers as lengths, and the covariance of all of them, mm² (weight: g). */
export interface PosteriorInMillimetres {
  readonly names: readonly string[];
  readonly values: Readonly<Record<string, Uncertain>>;
  readonly matrix: readonly (readonly number[])[];
}

/** A dimension's value is exp of its logarithm's mean, its u to first order: the logarithm's standard deviation times the value. */
export function inMillimetres({ names, dimensions, mean, covariance }: JointPrior): PosteriorInMillimetres {
  const n = names.length;
  const values = mean.map((value, i) => (i < dimensions ? Math.exp(value) : value));
  const scales = values.map((value, i) => (i < dimensions ? value : 1));
  return {
    names,
    values: Object.fromEntries(
      names.map((name, i) => [name, { value: values[i]!, u: scales[i]! * Math.sqrt(covariance[i * (n + 1)]!) }]),
    ),
    matrix: names.map((_, i) => names.map((__, j) => scales[i]! * scales[j]! * covariance[i * n + j]!)),
  };
}
