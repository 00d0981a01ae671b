import type { Columns } from './columns.ts';
import { average, logMoments } from './moments.ts';

/** How a waist at the navel (2012) or the top of the hip bone (NHANES; given stature and weight it agrees with the navel's to 1–2 %) becomes a natural waist. */
export interface WaistLevels {
  readonly naturalFrom: (navelMm: number) => number;
  /** The two ways between which the truth is taken to lie. */
  readonly ways: { readonly difference: (mm: number) => number; readonly regression: (mm: number) => number };
}

/**
 * From the survey that has both: a constant difference says too much for a large waist, the regression too little (it maps a person, and draws the spread in).
 * The middle of the two is taken, in logarithms.
 */
export function waistLevels(with1988: Columns): WaistLevels {
  const [navels, naturals] = [with1988['navel-girth']!, with1988['waist-girth']!];
  const apart = average(navels.map((navel, row) => navel - naturals[row]!));
  const { mean, covariance } = logMoments(with1988, ['navel-girth', 'waist-girth']);
  const slope = covariance[1]! / covariance[0]!;
  const difference = (mm: number) => mm - apart;
  const regression = (mm: number) => Math.exp(mean[1]! + slope * (Math.log(mm) - mean[0]!));
  return { naturalFrom: (mm) => Math.sqrt(difference(mm) * regression(mm)), ways: { difference, regression } };
}
