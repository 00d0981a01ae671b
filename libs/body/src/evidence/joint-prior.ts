import { zeros } from '../model/zeros.ts';
import type { HiddenNumber, LogGaussian } from './observation.ts';

/** Logarithms of dimensions and hidden numbers together, jointly normal; before the observations, hidden numbers are independent of the body. */
export interface JointPrior {
  /** Names of the dimensions, then of the hidden numbers. */
  readonly names: readonly string[];
  /** How many of them are dimensions. */
  readonly dimensions: number;
  readonly mean: readonly number[];
  /** Row by row. */
  readonly covariance: readonly number[];
}

export function jointPrior(body: LogGaussian, hidden: readonly HiddenNumber[]): JointPrior {
  const [n, all] = [body.names.length, body.names.length + hidden.length];
  const covariance = zeros(all * all);
  for (let row = 0; row < n; row++)
    for (let column = 0; column < n; column++) covariance[row * all + column] = body.covariance[row * n + column]!;
  hidden.forEach(({ sd }, i) => (covariance[(n + i) * (all + 1)] = sd ** 2));
  return {
    names: [...body.names, ...hidden.map(({ name }) => name)],
    dimensions: n,
    mean: [...body.mean, ...hidden.map(({ mean }) => mean)],
    covariance,
  };
}
