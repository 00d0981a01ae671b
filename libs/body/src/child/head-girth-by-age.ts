import { sizeTable } from '../sizes/size-tables.ts';

const points = sizeTable('head-girth-by-age').rows.map((row) => ({
  ageYears: row.ageYears!,
  mm: row.mm['head-girth']!.mid,
}));

/** A newborn's head, mm (growth references, from memory). */
const NEWBORN = 342;

/**
 * Head girth at an age in years, mm, linear between the published ages (3 months to 16 years) and down to birth; above, that of the oldest.
 * Source: growth references, 50th percentile of both sexes (from memory).
 * @example headGirthAt(7) // 515.5, half way between 511 at 6 and 520 at 8
 */
export function headGirthAt(ageYears: number): number {
  const next = points.findIndex((point) => point.ageYears >= ageYears);
  if (next === -1) return points.at(-1)!.mm;
  const after = points[next]!;
  const before = points[next - 1] ?? { ageYears: 0, mm: NEWBORN };
  return before.mm + ((after.mm - before.mm) * (ageYears - before.ageYears)) / (after.ageYears - before.ageYears);
}
