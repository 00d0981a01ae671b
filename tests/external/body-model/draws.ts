/** One of a list, and some of a list in a drawn order. */
export const drawOne = <T>(random: () => number, list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
export function drawSome<T>(random: () => number, list: readonly T[], count: number): T[] {
  const left = [...list];
  return Array.from({ length: count }, () => left.splice(Math.floor(random() * left.length), 1)[0]!);
}
