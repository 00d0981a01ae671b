import type { BodyDimension } from '../body-dimension.ts';
import type { ProfileCovariance, ProfileValue } from '../body-profile.ts';
import type { ProfileValues } from '../profile-values.ts';
import type { ChildFormula } from './child-formulas.ts';

/** A value's standard uncertainty split over the independent causes it has, mm: the dimension each comes in with → its share. */
type Shares = ReadonlyMap<BodyDimension, number>;

/**
 * Adds the dimensions that formulas give and that are not there yet, with the covariance of everything they tie together.
 * A formula is left out when something it rests on is missing. mm.
 */
export function applyFormulas(
  known: ProfileValues,
  formulas: readonly ChildFormula[],
): { readonly values: ProfileValues; readonly covariance: ProfileCovariance | null } {
  const values: Partial<Record<BodyDimension, ProfileValue>> = { ...known };
  const shares = new Map<BodyDimension, Shares>();
  const sharesOf = (name: BodyDimension) => shares.get(name) ?? new Map([[name, values[name]!.u]]);

  for (const formula of formulas) {
    const { name, constant, own, from } = formula;
    const parts = partsOf(formula);
    if (values[name] !== undefined || parts.some(([part]) => values[part] === undefined)) continue;
    const value = parts.reduce((sum, [part, times]) => sum + times * values[part]!.value, constant);
    const all = combine(parts.map(([part, times]) => [sharesOf(part), times])).set(name, own);
    for (const [part] of parts) shares.set(part, sharesOf(part));
    shares.set(name, all);
    values[name] = { value, u: Math.sqrt(dot(all, all)), how: 'table', from };
  }

  const names = [...shares.keys()];
  const rows = names.map(sharesOf);
  const matrix = rows.map((a) => rows.map((b) => dot(a, b)));
  return { values, covariance: names.length === 0 ? null : { names, matrix } };
}

function partsOf({ times }: ChildFormula): readonly (readonly [BodyDimension, number])[] {
  return Object.entries(times) as [BodyDimension, number][];
}

/** The shares of a weighted sum. */
function combine(terms: readonly (readonly [shares: Shares, times: number])[]): Map<BodyDimension, number> {
  const sum = new Map<BodyDimension, number>();
  for (const [shares, times] of terms) {
    for (const [cause, share] of shares) sum.set(cause, (sum.get(cause) ?? 0) + times * share);
  }
  return sum;
}

/** The covariance of two values, mm². */
function dot(a: Shares, b: Shares): number {
  let sum = 0;
  for (const [cause, share] of a) sum += share * (b.get(cause) ?? 0);
  return sum;
}
