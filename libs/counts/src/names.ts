/** Dimensions that reach from the left edge of a piece to its right one, as the sheet's contract names them. */
export const FULL_WIDTHS: ReadonlySet<string> = new Set([
  'width',
  'hem-width',
  'waist-width',
  'cross-back-width',
  'neck-width',
  'sleeve-top-width',
  'above-rib-width',
  'cuff-width',
  'cap-top-width',
]);

/** Heights above the edge where a piece begins. */
export const FROM_LOWER_EDGE: ReadonlySet<string> = new Set([
  'rib-depth',
  'band-depth',
  'collar-height',
  'hem-to-waist',
  'body-to-underarm',
  'centre-back-length',
  'shoulder-to-hem',
  'front-edge',
  'underarm-seam',
  'sleeve-length',
]);

/** Depths below a piece's upper end. */
export const FROM_TOP: ReadonlySet<string> = new Set(['front-neck-depth', 'back-neck-depth', 'shoulder-fall']);
