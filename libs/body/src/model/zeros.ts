/** So many zeros. A plain array: to make a typed one of this size takes longer than all that is done with it. */
export const zeros = (count: number): number[] => new Array<number>(count).fill(0);
