import { sizeTable } from '../sizes/size-tables.ts';

const points = sizeTable('head-girth-by-age').rows.map((row) => ({
  ageYears: row.ageYears!,
  mm: row.mm['head-girth']!.mid,
}));

/** The ages at which a child's head is known, years: 3 months to 16 years. */
export const HEAD_AGES = { youngest: points[0]!.ageYears, oldest: points.at(-1)!.ageYears } as const;

/**
 * Head girth at an age in years, mm, linear between the published ages; null outside them.
 * Source: growth references, 50th percentile of both sexes (from memory).
 * @example headGirthAt(7) // 515.5, half way between 511 at 6 and 520 at 8
 */
export function headGirthAt(ageYears: number): number | null {
  const next = points.findIndex((point) => point.ageYears >= ageYears);
  const after = points[next];
  if (after === undefined) return null;
  if (after.ageYears === ageYears) return after.mm;
  const before = points[next - 1];
  if (before === undefined) return null;
  return before.mm + ((after.mm - before.mm) * (ageYears - before.ageYears)) / (after.ageYears - before.ageYears);
}
