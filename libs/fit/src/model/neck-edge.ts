import { constant, hypot, leg, minus, plus, product, quotient, sqrt, times, type Quantity } from '#measure';

/**
 * Length of half an ellipse of width w and depth d: `(π/2)(3(a + d) − √((3a + d)(a + 3d)))`, a = w/2.
 * Source: S. Ramanujan, Modular equations and approximations to π, Quarterly Journal of Mathematics 45 (1914); from memory.
 */
function halfEllipse(w: Quantity, d: Quantity): Quantity {
  const a = times(0.5, w);
  const under = product(plus(times(3, a), d), plus(a, times(3, d)));
  return times(Math.PI / 2, minus(times(3, plus(a, d)), sqrt(under)));
}

/** Length of a neck's edge: half ellipses in front and behind, or a V's two straight sides and the back's half ellipse. */
export function neckEdge(vShaped: boolean, w: Quantity, front: Quantity, back: Quantity): Quantity {
  const inFront = vShaped ? times(2, hypot(times(0.5, w), front)) : halfEllipse(w, front);
  return plus(inFront, halfEllipse(w, back));
}

/**
 * Front depth of a V on the piece, under a band of depth β worked at right angles to the edge: its point moves by more than β,
 * since the two bands meet. `d_p = (d_f + √(k²d_f² + (1 − k²)β²))/(1 − k²)`, `k = 2β/w_p`.
 */
export function vOnPiece(front: Quantity, w: Quantity, band: Quantity): Quantity {
  const k = quotient(times(2, band), plus(w, times(2, band)));
  const c = leg(constant(1), k);
  return quotient(plus(front, hypot(product(k, front), product(c, band))), product(c, c));
}
