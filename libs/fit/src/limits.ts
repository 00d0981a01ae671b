/**
 * Limits that a number is kept within. A limit that is not known (NaN) keeps nothing: the check that watches over the
 * same measure then says that it is not known.
 */

/** The value, or `floor` where that is greater. */
export function atLeast(value: number, floor: number): number {
  return floor > value ? floor : value;
}

/** The value, or `ceiling` where that is smaller. */
export function atMost(value: number, ceiling: number): number {
  return ceiling < value ? ceiling : value;
}
