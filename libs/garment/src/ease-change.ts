import type { Region, Wears } from './garment.ts';

/**
 * What to change on a garment that does not wear quite right, by region, mm; a suggestion, for the maker to take or leave.
 * Where it wears too close the new one should be roomier. Girths at chest and hip (half of a published band of ease, 50 mm)
 * and at the upper arm (0.35 of that, as its ease goes with the chest's), and lengths. Assumed.
 */
export const EASE_CHANGE_BY_WEARS: Readonly<Record<Region, Readonly<Record<Wears, number>>>> = {
  chest: { close: 25, right: 0, roomy: -25 },
  hip: { close: 25, right: 0, roomy: -25 },
  'upper-arm': { close: 9, right: 0, roomy: -9 },
  length: { close: 25, right: 0, roomy: -25 },
  sleeve: { close: 15, right: 0, roomy: -15 },
};
