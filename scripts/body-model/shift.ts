import { condition } from '#body';
import type { Joined } from './join-surveys.ts';

/** No measure is taken to shift less than this part of its spread: two surveys that agree may do so by luck (assumed). */
const LEAST_SHIFT = 0.3;

/**
 * How far another population's means may lie off, as a standard deviation per measure: with two surveys, their variance about their own mean is half of
 * the squared difference, stature and weight being equal. A measure that only one survey has gets the common ones' root mean square, relative to spread.
 */
export function shiftSds(joined: Joined, common: ReadonlySet<string>): number[] {
  const { names, within, gap } = joined;
  const n = names.length;
  const on = [names.indexOf('stature'), names.indexOf('weight')];
  const zeros = [0, 0];
  const { rest, gain, covariance } = condition({ n, mean: gap, covariance: within }, on, zeros, zeros);
  const relative = new Map<number, number>();
  const spread = new Map<number, number>();
  rest.forEach((index, i) => {
    const own = gap[index]! - gain[2 * i]! * gap[on[0]!]! - gain[2 * i + 1]! * gap[on[1]!]!;
    const sd = Math.sqrt(covariance[i * rest.length + i]!);
    spread.set(index, sd);
    if (common.has(names[index]!)) relative.set(index, Math.max(LEAST_SHIFT, Math.abs(own) / Math.SQRT2 / sd));
  });
  const squares = [...relative.values()].map((value) => value ** 2);
  const usual = Math.sqrt(squares.reduce((sum, value) => sum + value, 0) / squares.length);
  return Array.from(names, (_, index) =>
    on.includes(index) ? 0 : spread.get(index)! * (relative.get(index) ?? usual),
  );
}
