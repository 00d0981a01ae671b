/** The checks of a sheet, in its order. */
export const CHECKS = [
  'head-through-neck',
  'hand-through-cuff',
  'cuff-stays',
  'upper-arm',
  'armhole',
  'over-the-shoulders',
  'hip',
  'negative-ease',
  'neck-on-shoulders',
  'body-below-underarm',
  'sleeve-below-underarm',
  'under-the-arm',
  'neck-depth',
  'sleeve-taper',
  'front-and-back',
  'seam',
  'nape-to-cuff',
  'along-the-top',
  'raglan-slope',
] as const;
export type CheckName = (typeof CHECKS)[number];
