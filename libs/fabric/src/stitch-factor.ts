import type { Stitch } from './stitch.ts';

/**
 * Fabric thickness over the yarn's diameter as wraps on a ruler show it, 25.4/wraps. Calibrated: the geometric mean, over
 * weights 2 to 6, of the middle of the expected thickness (expected-thickness.json) over 25.4 divided by the middle of
 * the category's wraps (yarn-weights.json). It is 1.24 to 1.41 for stockinette, 1.76 to 1.95 for single crochet.
 */
export const FACTOR_ON_WRAPS: Readonly<Record<Stitch, number>> = { stockinette: 1.29, 'single-crochet': 1.81 };

/**
 * Wraps on a ruler lie loose, a packing of about 0.1; the diameter from mass and length is packed to 0.65. So wraps show
 * √(0.65/0.1) ≈ 2.5 times the diameter (derived), and the factor on a packed diameter is larger by as much.
 */
export const WRAPS_OVER_PACKED = 2.5;

/** What both ways are believed to, as a share of the thickness (assumed; the calibration itself scatters by a tenth). */
export const YARN_RELATIVE_U = 0.25;

/** mm, from wraps per inch (above 0). */
export function thicknessFromWraps(wrapsPerInch: number, stitch: Stitch): number {
  return (FACTOR_ON_WRAPS[stitch] * 25.4) / wrapsPerInch;
}

/** mm, from the packed diameter of the yarn, mm. */
export function thicknessFromDiameter(diameterMm: number, stitch: Stitch): number {
  return FACTOR_ON_WRAPS[stitch] * WRAPS_OVER_PACKED * diameterMm;
}
