/** A width in stitches about its middle: a centre stitch where the number is odd, and so many on each side. */
export interface Halves {
  readonly centre: 0 | 1;
  readonly side: number;
}

/** 37 stitches are one in the centre and 18 on each side. */
export function halvesOf(stitches: number): Halves {
  return { centre: stitches % 2 === 0 ? 0 : 1, side: Math.floor(stitches / 2) };
}
