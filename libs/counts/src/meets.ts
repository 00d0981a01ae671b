import type { Node } from './node.ts';

/** Whether a count is whole, as many as there must be, and what is asked of it. */
export function meets(count: number, { length, pitch, demands }: Node): boolean {
  const whole = Math.round(count);
  if (Math.abs(count - whole) > 1e-6) return false;
  if (whole < (length >= pitch / 2 ? 1 : 0)) return false;
  return demands.every(({ of, plus }) => (whole - plus) % of === 0);
}
