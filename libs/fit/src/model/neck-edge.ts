import { constant, hypot, leg, minus, plus, product, quotient, sqrt, times, type Quantity } from '#measure';

/**
 * Length of half an ellipse of width w and depth d: `(π/2)(3(a + d) − √((3a + d)(a + 3d)))`, a = w/2.
 * Source: S. Ramanujan, Modular equations and approximations to π, Quarterly Journal of Mathematics 45 (1914); from memory.
 */
export function halfEllipse(w: Quantity, d: Quantity): Quantity {
  const a = times(0.5, w);
  const under = product(plus(times(3, a), d), plus(a, times(3, d)));
  return times(Math.PI / 2, minus(times(3, plus(a, d)), sqrt(under)));
}

/** Length of a neck's edge: half ellipses in front and behind, or a V's two straight sides and the back's half ellipse. */
export const neckEdge = (vShaped: boolean, w: Quantity, front: Quantity, back: Quantity): Quantity =>
  plus(frontNeckEdge(vShaped, w, front), halfEllipse(w, back));

/** Length of the neck's edge on a front. */
export const frontNeckEdge = (vShaped: boolean, w: Quantity, depth: Quantity): Quantity =>
  vShaped ? times(2, hypot(times(0.5, w), depth)) : halfEllipse(w, depth);

/**
 * Front depth of a V on the piece, under a band of depth β worked at right angles to the edge: its point moves by more than β,
 * since the two bands meet. `d_p = (d_f + √(k²d_f² + (1 − k²)β²))/(1 − k²)`, `k = 2β/w_p`.
 */
export function vOnPiece(front: Quantity, w: Quantity, band: Quantity): Quantity {
  const k = quotient(times(2, band), plus(w, times(2, band)));
  const c = leg(constant(1), k);
  return quotient(plus(front, hypot(product(k, front), product(c, band))), product(c, c));
}
