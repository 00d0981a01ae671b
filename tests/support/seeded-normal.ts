/** Mulberry32, a 32-bit generator in the public domain: the same draws in every run. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** A normal draw by Box and Muller (1958). */
export const normalDraw = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** The lower triangle L with L Lᵀ = matrix (Cholesky): L z has that covariance when z is of independent normals. */
export function cholesky(matrix: readonly (readonly number[])[]): number[][] {
  const lower = matrix.map((row) => row.map(() => 0));
  matrix.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      const done = lower[i]!.slice(0, j).reduce((sum, l, k) => sum + l * lower[j]![k]!, 0);
      lower[i]![j] = i === j ? Math.sqrt(row[i]! - done) : (row[j]! - done) / lower[j]![j]!;
    }
  });
  return lower;
}
