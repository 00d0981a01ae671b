import type { BodyDimension } from '../body-dimension.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import type { Posterior } from './posterior.ts';

/** Below this share a sex no longer counts for the range of a body whose sex was not said. */
const COUNTS = 0.05;

const SEXES = ['woman', 'man'] as const;

export type Side = 'below' | 'above';

/** On which side of the survey's 1st to 99th percentile a value lies, mm (weight: g); null within. */
export function outside(
  coefficients: BodyModelCoefficients,
  weights: Posterior['weights'],
  name: BodyDimension,
  value: number,
): Side | null {
  const index = coefficients.dimensions.indexOf(name);
  let lowest = Infinity;
  let highest = -Infinity;
  for (const sex of SEXES) {
    if (weights[sex] < COUNTS) continue;
    lowest = Math.min(lowest, coefficients[sex].lowest[index]!);
    highest = Math.max(highest, coefficients[sex].highest[index]!);
  }
  if (value < lowest) return 'below';
  return value > highest ? 'above' : null;
}
