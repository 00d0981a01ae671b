import { normalCdf } from '#measure';
import type { YarnUse } from './yarn-use.ts';

/** So much more than is needed is usual to buy: for the swatch, ends, and a dye lot that cannot be had again (practice). */
export const SPARE = 0.1;

/** Whether so many grams do: what is left, and the chance that they run out. */
export interface Enough {
  readonly leftG: number;
  /** From 0 to 1. */
  readonly chanceOfRunningOut: number;
}

/** Whether so many grams of yarn are enough for what a garment takes. */
export function yarnEnough(haveG: number, { massG }: Pick<YarnUse, 'massG'>): Enough {
  const leftG = haveG - massG.value;
  const certain = leftG < 0 ? 1 : 0;
  return { leftG, chanceOfRunningOut: massG.u > 0 ? normalCdf(-leftG / massG.u) : certain };
}
