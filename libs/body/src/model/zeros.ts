/** Begun with a fraction: an array of whole numbers alone is made anew when the first fraction is put in. */
const FRACTIONS: readonly number[] = Array.from({ length: 1024 }, () => 0.5).fill(0);

/** So many zeros. A plain array: to make a typed one of this size takes longer than all that is done with it. */
export const zeros = (count: number): number[] =>
  count <= FRACTIONS.length ? FRACTIONS.slice(0, count) : new Array<number>(count).fill(0);
