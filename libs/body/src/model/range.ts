import type { BodyDimension } from '../body-dimension.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import type { Posterior } from './posterior.ts';

/** Below this share a sex no longer counts for the range of a body whose sex was not said. */
const COUNTS = 0.05;

export type Side = 'below' | 'above';

/** On which side of the survey's 1st to 99th percentile a value lies, mm (weight: g); null within. */
export function outside(
  coefficients: BodyModelCoefficients,
  weights: Posterior['weights'],
  name: BodyDimension,
  value: number,
): Side | null {
  const index = coefficients.dimensions.indexOf(name);
  const sexes = (['woman', 'man'] as const).filter((sex) => weights[sex] >= COUNTS);
  if (value < Math.min(...sexes.map((sex) => coefficients[sex].lowest[index]!))) return 'below';
  if (value > Math.max(...sexes.map((sex) => coefficients[sex].highest[index]!))) return 'above';
  return null;
}
