/**
 * The standard uncertainty of y = f(x₁ … xₙ): u² = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ with cᵢ = ∂f/∂xᵢ. Source: JCGM 100:2008 (GUM),
 * 5.2.2, equations 13 to 15; without `correlation` the inputs are independent (5.1.2, equation 10). Allocates nothing.
 *
 * @param coefficients cᵢ, one an input
 * @param us uᵢ, in the inputs' units, in the same order
 * @param correlation rᵢⱼ, symmetric with ones on its diagonal
 */
export function propagate(
  coefficients: ArrayLike<number>,
  us: ArrayLike<number>,
  correlation?: ArrayLike<ArrayLike<number>>,
): number {
  let variance = 0;
  for (let i = 0; i < coefficients.length; i++) {
    const own = coefficients[i]! * us[i]!;
    variance += own * own;
    if (correlation === undefined) continue;
    for (let j = 0; j < i; j++) variance += 2 * own * coefficients[j]! * us[j]! * correlation[i]![j]!;
  }
  return Math.sqrt(Math.max(0, variance));
}

/** The same from the inputs' covariance matrix, u² = Σᵢ Σⱼ cᵢ cⱼ u(xᵢ, xⱼ) (equation 13). Allocates nothing. */
export function propagateCovariance(coefficients: ArrayLike<number>, covariance: ArrayLike<ArrayLike<number>>): number {
  let variance = 0;
  for (let i = 0; i < coefficients.length; i++) {
    const row = covariance[i]!;
    variance += coefficients[i]! * coefficients[i]! * row[i]!;
    for (let j = 0; j < i; j++) variance += 2 * coefficients[i]! * coefficients[j]! * row[j]!;
  }
  return Math.sqrt(Math.max(0, variance));
}
