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

/** One of a list, and some of a list in a drawn order. */
export const drawOne = <T>(random: () => number, list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
export function drawSome<T>(random: () => number, list: readonly T[], count: number): T[] {
  const left = [...list];
  return Array.from({ length: count }, () => left.splice(Math.floor(random() * left.length), 1)[0]!);
}
