import type { BodyDimension } from '../body-dimension.ts';
import type { BodyProfile } from '../body-profile.ts';
import type { LogGaussian } from './observation.ts';

/** A profile as a prior: what was measured, read or worked out, with the covariance of what hangs together. */
export function logGaussianOf({ values, covariance }: BodyProfile): LogGaussian {
  const names = Object.keys(values) as BodyDimension[];
  const known = names.map((name) => values[name]!);
  const cell = (i: number, j: number): number => {
    const [row, column] = [covariance?.names.indexOf(names[i]!) ?? -1, covariance?.names.indexOf(names[j]!) ?? -1];
    const mm = row === -1 || column === -1 ? (i === j ? known[i]!.u ** 2 : 0) : covariance!.matrix[row]![column]!;
    return mm / (known[i]!.value * known[j]!.value);
  };
  return {
    names,
    mean: known.map(({ value }) => Math.log(value)),
    covariance: names.flatMap((_, i) => names.map((__, j) => cell(i, j))),
  };
}
