import type { Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Armhole, Widths } from './armhole.ts';
import type { Body } from './body.ts';
import type { Girths } from './girths.ts';
import type { Lengths } from './lengths.ts';
import type { Neck } from './neck.ts';
import type { Opening } from './opening.ts';
import type { Rounded } from './planned.ts';
import type { Sleeve } from './sleeve.ts';

/** Every quantity of a garment, for one set of choices. */
export interface GarmentModel {
  readonly choices: Choices;
  readonly girths: Girths;
  readonly lengths: Lengths;
  readonly widths: Widths;
  readonly neck: Neck;
  readonly armhole: Armhole;
  readonly body: Body;
  /** Null for a neck that does not open. */
  readonly opening: Opening | null;
  /** What passes the neck with its opening. */
  readonly headPasses: Quantity;
  /** Null for a vest. */
  readonly sleeve: Sleeve | null;
  readonly rounded: RoundedNumbers;
}

/** The numbers that several dimensions are rounded with. */
export interface RoundedNumbers {
  readonly chest: Rounded;
  readonly hem: Rounded;
  readonly width: Rounded | null;
  readonly armhole: Rounded;
  readonly length: Rounded;
  readonly neckWidth: Rounded;
  readonly band: Rounded;
  readonly sleeveTop: Rounded;
  readonly sleeve: { readonly length: Rounded; readonly underarmSeam: Rounded; readonly cuff: Rounded } | null;
}
