import type { AgeParts } from './coefficients.ts';

export const AGED_GIRTHS = ['waist-girth', 'hip-girth'] as const;

/** What an age does to one girth: the move of its log mean, and the variance it adds. Between the ages of the table, linear; beyond them, the last. */
export function ageEffect(
  ages: AgeParts,
  girth: (typeof AGED_GIRTHS)[number],
  ageYears: number | null,
): { readonly shift: number; readonly variance: number } {
  const { shift, extraSd, unsaidSd } = ages[girth];
  if (ageYears === null) return { shift: 0, variance: unsaidSd ** 2 };
  return { shift: between(ages.years, shift, ageYears), variance: between(ages.years, extraSd, ageYears) ** 2 };
}

function between(xs: readonly number[], ys: readonly number[], x: number): number {
  const next = xs.findIndex((known) => known >= x);
  if (next === 0) return ys[0]!;
  if (next === -1) return ys.at(-1)!;
  const part = (x - xs[next - 1]!) / (xs[next]! - xs[next - 1]!);
  return ys[next - 1]! + part * (ys[next]! - ys[next - 1]!);
}
