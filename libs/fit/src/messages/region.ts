export const REGIONS = ['rib', 'body', 'sleeve', 'yoke', 'section'] as const;
export type RegionName = (typeof REGIONS)[number];

/** In which fabric a region is worked. */
export const REGION_FABRICS = ['main', 'rib', 'other'] as const;
export type RegionFabric = (typeof REGION_FABRICS)[number];

/** On the stitches of the region above, or on a width of its own. */
export const REGION_STITCHES = ['as-above', 'own'] as const;
export type RegionStitches = (typeof REGION_STITCHES)[number];

/** A part of a piece in one fabric, from the edge where work begins. mm */
export interface Region {
  readonly region: RegionName;
  readonly fabric: RegionFabric;
  readonly from: number;
  readonly to: number;
  readonly stitches: RegionStitches;
  /** Where it begins, as worn. */
  readonly width: number;
  /** The width with which the region above begins; absent on the last. */
  readonly startsAt?: number;
}
