/**
 * Length of half an ellipse, by Ramanujan's first approximation.
 * @param width the ellipse's whole width, mm, ≥ 0
 * @param depth its depth (half its height), mm, ≥ 0
 * @returns mm
 * Source: S. Ramanujan, Modular equations and approximations to π, Quarterly Journal of Mathematics 45 (1914); from memory.
 */
export function halfEllipse(width: number, depth: number): number {
  const a = width / 2;
  return (Math.PI / 2) * (3 * (a + depth) - Math.sqrt((3 * a + depth) * (a + 3 * depth)));
}
