/** Measures two things by turns, so that what slows the machine down slows both, and gives the medians and their ratio. */
export async function alternate(rounds, measureOurs, measureBare) {
  const ours = [];
  const bare = [];
  for (let round = 0; round < rounds; round++) {
    ours.push(await measureOurs());
    bare.push(await measureBare());
  }
  return ratioOf(ours, bare);
}

/** The medians of two rows that were measured by turns, and of their ratio. */
export function ratioOf(ours, bare) {
  const ratios = ours.map((value, round) => value / bare[round]);
  return { ours: median(ours), bare: median(bare), ratio: median(ratios) };
}

export function median(numbers) {
  return numbers.toSorted((a, b) => a - b)[numbers.length >> 1];
}
