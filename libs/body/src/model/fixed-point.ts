/** Evaluations at most: after them b moves by less than 0.001 (size-fit.spec.ts). */
const EVALUATIONS = 4;

/** Values that contradict one another can place b anywhere; it is sought among bodies of 9 to 125 kg/m² (assumed: there are no others). */
const LEAST = Math.log(9 / 25);
const MOST = Math.log(125 / 25);
const within = (b: number): number => Math.min(Math.max(b, LEAST), MOST);

/** Nearer than this is there: what the tangent misses is of the order of its square. */
const STILL = 1e-4;

/**
 * Where an evaluation at b finds the b that it was made at: by secants, since plain repetition swings for very heavy bodies.
 * @returns the last evaluation, with the b that the last secant leads to.
 */
export function fixedPoint<Found extends { readonly b: number }>(start: number, evaluate: (b: number) => Found): Found {
  let at = start;
  let found = evaluate(at);
  let next = within(found.b);
  for (let count = 1; count < EVALUATIONS && Math.abs(next - at) > STILL; count++) {
    const before = { at, off: found.b - at };
    at = next;
    found = evaluate(at);
    const off = found.b - at;
    next = within(off === before.off ? found.b : at - (off * (at - before.at)) / (off - before.off));
  }
  return { ...found, b: next };
}
