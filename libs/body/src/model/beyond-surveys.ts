import { OLDEST } from './model-notes.ts';

/** From this body mass index down, kg/m², as b: few soldiers are thinner. */
const THIN = Math.log(18.5 / 25);

/** From this age on, years, civilians are spread a little wider about what size and age say; those of 80 and over by as much as this. */
const OLD = { from: 60, sd: 0.02, years: 20 };

const old = (ageYears: number | null, from: number): number =>
  (OLD.sd * Math.max(0, (ageYears ?? 0) - from)) / OLD.years;

/**
 * The variance added to the logarithm of a dimension that only soldiers were measured at, for a body beyond their sizes or ages. All assumed: with p = max(0, b), (0.05p)² + (0.27·slope·p²)²
 * for a heavy body, `slope` that of the dimension on b; (0.1(ln(18.5/25) − b))² for a thin one; (0.02(age − 58)/20)² for an old one.
 */
export function beyondSoldiers(b: number, slope: number, ageYears: number | null): number {
  const p = Math.max(0, b);
  const thin = Math.max(0, THIN - b);
  return (0.05 * p) ** 2 + (0.27 * slope * p ** 2) ** 2 + (0.1 * thin) ** 2 + old(ageYears, OLDEST) ** 2;
}

/** The same for a girth of civilians, at the ages where few of them are. */
export const beyondCivilians = (ageYears: number | null): number => old(ageYears, OLD.from) ** 2;
