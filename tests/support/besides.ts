import type { CheckName } from '#fit';

/** Those of comfort, which draw nothing in and keep no remedy from being offered; and seams, which compare what was made. */
export const BESIDES: readonly CheckName[] = [
  'seam',
  'cuff-stays',
  'under-the-arm',
  'neck-depth',
  'sleeve-taper',
  'front-and-back',
  'along-the-top',
  'raglan-slope',
];
