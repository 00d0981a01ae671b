/** A place on a line, and what a function makes of it. */
type Probe = readonly [x: number, y: number];

/** So often one end may stay before the bracket is halved: where the function lies flat, the step hardly moves. */
const STAYS = 3;

/**
 * Where a function crosses zero between `below`, where it is negative, and `above`, where it is not: regula falsi with
 * the Illinois step, halving where that does not get on, until it is within `near` of zero or to the last digits. Where it
 * jumps, the side on which it is not negative.
 * Source: M. Dowell and P. Jarratt, A modified regula falsi method, BIT 11 (1971); from memory.
 */
export function crossing(below: Probe, above: Probe, f: (x: number) => number, near = 0): number {
  let a = below[0];
  let fa = below[1];
  let b = above[0];
  let fb = above[1];
  let stayed = 0;
  for (let step = 0; step < 300 && Math.abs(fb) > near && Math.abs(b - a) > 1e-13 * Math.abs(b); step++) {
    const x = stayed < STAYS ? b - (fb * (b - a)) / (fb - fa) : (a + b) / 2;
    const fx = f(x);
    if (fx * fb < 0) {
      a = b;
      fa = fb;
      stayed = 0;
    } else {
      fa /= 2;
      stayed = stayed < STAYS ? stayed + 1 : 0;
    }
    b = x;
    fb = fx;
  }
  return fb < -near ? a : b;
}
