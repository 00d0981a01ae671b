/**
 * Where an increasing function crosses zero between `low` (negative) and `high` (not negative): regula falsi with the
 * Illinois step, to the last digits.
 * Source: M. Dowell and P. Jarratt, A modified regula falsi method, BIT 11 (1971); from memory.
 */
export function crossing(low: number, high: number, f: (x: number) => number): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  for (let step = 0; step < 100 && fb !== 0 && Math.abs(b - a) > 1e-13 * Math.abs(b); step++) {
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
