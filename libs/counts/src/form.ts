/** A count as a sum of whole unknowns, each so many times; an identity in stitches. */
export type Form = ReadonlyMap<number, number>;

export const unknownAt = (index: number): Form => new Map([[index, 1]]);

/** Adds so many times a form to a sum. */
export function addTimes(sum: Map<number, number>, form: Form, times: number): void {
  for (const [index, each] of form) {
    const total = (sum.get(index) ?? 0) + each * times;
    if (Math.abs(total) < 1e-9) sum.delete(index);
    else sum.set(index, total);
  }
}

/** The value of a form where its unknowns are known. */
export function valueOf(form: Form, values: ArrayLike<number>): number {
  let sum = 0;
  for (const [index, times] of form) sum += times * values[index]!;
  return sum;
}
