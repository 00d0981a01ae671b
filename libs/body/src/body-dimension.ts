/**
 * The body dimensions the product knows, in ISO 8559-1's terms where it has one. All are lengths in millimetres,
 * except `weight`, which is in grams.
 */
export const BODY_DIMENSIONS = [
  'stature',
  'weight',
  'chest-girth',
  'underbust-girth',
  'waist-girth',
  'hip-girth',
  'neck-base-girth',
  'across-back',
  'shoulder-length',
  'back-waist-length',
  'front-waist-length',
  'back-hip-length',
  'nape-to-cuff',
  'arm-length',
  'underarm-length',
  'scye-depth',
  'scye-girth',
  'upper-arm-girth',
  'forearm-girth',
  'wrist-girth',
  'hand-girth',
  'head-girth',
  'waist-to-hip',
  'shoulder-girth',
] as const;
export type BodyDimension = (typeof BODY_DIMENSIONS)[number];
