/** How closely a garment fits, by the bands of the published fit chart, closest first. */
export const EASE_CATEGORIES = ['very-close', 'close', 'classic', 'loose', 'oversized'] as const;
export type EaseCategory = (typeof EASE_CATEGORIES)[number];
