import type { GarmentProfile } from '#garment';
import type { Rules } from '../design/rules.ts';

/** A sweater that fits, as what it tells of its wearer. mm */
export interface Sweater extends GarmentProfile {
  /** Names its observations and its hidden ease. */
  readonly name: string;
}

/** What the body is taken to be while its sweaters are read, mm; null where nothing is known. */
export interface WearerSoFar {
  /** The rules at the wearer's size: those that a new sweater is made by. */
  readonly sized: Rules;
  readonly backWaist: number | null;
  readonly neckBase: number | null;
}
