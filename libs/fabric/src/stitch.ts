export const STITCHES = ['stockinette', 'single-crochet'] as const;
export type Stitch = (typeof STITCHES)[number];
