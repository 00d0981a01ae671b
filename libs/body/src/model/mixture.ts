/** One of several models: the logarithm of how well it explains what is known, and what it makes of a body. */
interface Part {
  readonly logDensity: number;
  readonly mean: readonly number[];
  /** Row by row. */
  readonly covariance: readonly number[];
}

/** How probable each part is, all being equally probable before. */
export function sharesOf(parts: readonly Pick<Part, 'logDensity'>[]): readonly number[] {
  const best = Math.max(...parts.map(({ logDensity }) => logDensity));
  const densities = parts.map(({ logDensity }) => Math.exp(logDensity - best));
  const total = densities.reduce((sum, density) => sum + density, 0);
  return densities.map((density) => density / total);
}

/** Σ share × numbers of the part, number by number. */
export const weightedSum = (shares: readonly number[], lists: readonly (readonly number[])[]): number[] =>
  lists[0]!.map((_, at) => lists.reduce((sum, list, part) => sum + shares[part]! * list[at]!, 0));

/** Mean and covariance of a mixture. */
export function mixtureMoments(shares: readonly number[], parts: readonly Part[]) {
  const mean = weightedSum(
    shares,
    parts.map((part) => part.mean),
  );
  const covariance = weightedSum(
    shares,
    parts.map((part) => part.covariance),
  );
  const m = mean.length;
  parts.forEach((part, index) => {
    const off = part.mean.map((value, at) => value - mean[at]!);
    for (let i = 0; i < m; i++)
      for (let j = 0; j < m; j++) covariance[i * m + j]! += shares[index]! * off[i]! * off[j]!;
  });
  return { mean, covariance };
}
