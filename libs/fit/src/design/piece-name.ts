/** The pieces that a garment may have. */
export const PIECES = [
  'back',
  'front',
  'left-front',
  'right-front',
  'sleeve',
  'front-band',
  'neck-band',
  'armhole-band',
] as const;
export type PieceName = (typeof PIECES)[number];
