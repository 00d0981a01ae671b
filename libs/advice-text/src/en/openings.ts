import type { Opening } from '#fit';

/** How a neck opens. */
export const openings: Readonly<Record<Opening, string>> = {
  'buttoned-shoulder': 'leave a shoulder open with buttons',
  'buttoned-raglan': 'leave a raglan seam open with buttons',
  'overlapping-shoulders': 'let the shoulders overlap and open, without buttons',
  'overlapping-raglan': 'let a raglan seam overlap and open, without buttons',
};
