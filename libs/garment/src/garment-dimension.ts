/** What can be measured on a garment laid flat, closed, smoothed and not stretched; the trade's names. All in millimetres. */
export const GARMENT_DIMENSIONS = [
  'chest-width',
  'hem-width',
  'shoulder-to-hem',
  'back-neck-depth',
  'front-neck-depth',
  'neck-width',
  'cross-back-width',
  'armhole-depth',
  'sleeve-top-width',
  'sleeve-length',
  'cuff-width',
] as const;
export type GarmentDimension = (typeof GARMENT_DIMENSIONS)[number];
