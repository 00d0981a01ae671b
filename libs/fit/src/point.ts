/** A place on a piece: across and along, mm. */
export type Point = readonly [number, number];
