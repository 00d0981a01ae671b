import type { How } from '#measure';
import type { GarmentDimension } from './garment-dimension.ts';

/** How far two readings of a flat garment may lie from the true width or length, mm: the tighter and the wider of the usual limits. */
type Tolerance = readonly [tighter: number, wider: number];

/** Source: trade specifications for garments laid flat: chest ±1 to 1.5 cm of half width, other key points ±1 to 2 cm. */
const CHEST: Tolerance = [10, 15];
const KEY_POINT: Tolerance = [10, 20];
/** Assumed: a key point's limits would be as large as these measures themselves. */
const SHORT: Tolerance = [5, 10];

const TOLERANCE: Readonly<Record<GarmentDimension, Tolerance>> = {
  'chest-width': CHEST,
  'hem-width': KEY_POINT,
  'shoulder-to-hem': KEY_POINT,
  'back-neck-depth': SHORT,
  'front-neck-depth': SHORT,
  'neck-width': KEY_POINT,
  'cross-back-width': KEY_POINT,
  'armhole-depth': KEY_POINT,
  'sleeve-top-width': KEY_POINT,
  'sleeve-length': KEY_POINT,
  'cuff-width': SHORT,
};

/**
 * The standard uncertainty of the thickness of one layer whose maker gave none, mm: of four layers under a small book, divided by
 * four (assumed).
 */
export const DEFAULT_THICKNESS_U = 0.3;

/** A guess, or another maker's table, is taken for half as sure as a measure at home (assumed). */
const TIMES_HOME = 2;

/**
 * The standard uncertainty of a garment's measure whose maker gave none, mm. A tolerance ±a says only that the error lies
 * within it: u = a/√3 (JCGM 100:2008, 4.3.7). Trained takes the tighter of the trade's limits, at home the wider.
 *
 * @example defaultGarmentU('chest-width', 'home') // 15/√3 = 8.66
 */
export function defaultGarmentU(dimension: GarmentDimension, how: How): number {
  const [tighter, wider] = TOLERANCE[dimension];
  const limit = { trained: tighter, home: wider, estimated: TIMES_HOME * wider, table: TIMES_HOME * wider }[how];
  return limit / Math.sqrt(3);
}
