import type { Wish } from './sheet-parts.ts';

/** A wish of a collision in words. */
export const wishText = (wish: Wish): string => (typeof wish === 'string' ? wish : wish.text);
