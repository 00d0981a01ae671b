/**
 * A thick fabric takes room. Four girths of one tube, of a fabric `t` thick:
 *
 * | girth | what it is | relation |
 * |---|---|---|
 * | inner `I` | the room inside | |
 * | mid `M` | what stitches ÷ gauge gives | `M = I + πt` |
 * | outer `O` | a tape round the garment when worn | `O = I + 2πt` |
 * | flat `F` | laid flat, the fold sharp, width doubled | `F = I + 4t` |
 *
 * `O − I = 2πt` holds for every convex outline (J. Steiner 1840, the perimeter of a parallel curve). Flat, the inner faces
 * touch and each of the two folds adds t at both edges. So `M = F − (4 − π)t`. Only girths convert: a width above the
 * armhole, a neck width, a depth or a length lies in one layer, and is the same on the piece and assembled.
 *
 * All in mm; any finite numbers.
 */
export interface Girths {
  readonly innerMm: number;
  readonly midMm: number;
  readonly outerMm: number;
  readonly flatMm: number;
}

export const flatFromInner = (innerMm: number, thicknessMm: number): number => innerMm + 4 * thicknessMm;
export const innerFromFlat = (flatMm: number, thicknessMm: number): number => flatMm - 4 * thicknessMm;
export const midFromFlat = (flatMm: number, thicknessMm: number): number => flatMm - (4 - Math.PI) * thicknessMm;
export const flatFromMid = (midMm: number, thicknessMm: number): number => midMm + (4 - Math.PI) * thicknessMm;
export const outerFromInner = (innerMm: number, thicknessMm: number): number => innerMm + 2 * Math.PI * thicknessMm;

/** One girth of a tube and its fabric's thickness, mm. */
export type OneGirth = ({ readonly innerMm: number } | { readonly midMm: number } | { readonly flatMm: number }) & {
  readonly thicknessMm: number;
};

/**
 * All four girths of a tube from one of them.
 *
 * @example girths({ flatMm: 960, thicknessMm: 6 }) // inner 936, mid 954.85, outer 973.70
 */
export function girths(known: OneGirth): Girths {
  const { thicknessMm } = known;
  const flatMm =
    'flatMm' in known
      ? known.flatMm
      : 'midMm' in known
        ? flatFromMid(known.midMm, thicknessMm)
        : flatFromInner(known.innerMm, thicknessMm);
  const innerMm = innerFromFlat(flatMm, thicknessMm);
  return { innerMm, midMm: midFromFlat(flatMm, thicknessMm), outerMm: outerFromInner(innerMm, thicknessMm), flatMm };
}
