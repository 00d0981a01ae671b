/** A place on a line, and what a function makes of it. */
export type Probe = readonly [x: number, y: number];

/**
 * Where a function crosses zero between `below`, where it is negative, and `above`, where it is not: regula falsi with
 * the Illinois step, until it is within `near` of zero or to the last digits.
 * Source: M. Dowell and P. Jarratt, A modified regula falsi method, BIT 11 (1971); from memory.
 */
export function crossing(below: Probe, above: Probe, f: (x: number) => number, near = 0): number {
  let a = below[0];
  let fa = below[1];
  let b = above[0];
  let fb = above[1];
  for (let step = 0; step < 100 && Math.abs(fb) > near && Math.abs(b - a) > 1e-13 * Math.abs(b); step++) {
    const x = b - (fb * (b - a)) / (fb - fa);
    const fx = f(x);
    if (fx * fb < 0) {
      a = b;
      fa = fb;
    } else {
      fa /= 2;
    }
    b = x;
    fb = fx;
  }
  return b;
}
