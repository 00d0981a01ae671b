import type { EaseCategory } from '../design/design.ts';

/**
 * Numbers of an adult's sweater that tell how its measures follow from the body, mm. They are those that a new sweater is made by; a maker who overrides a rule
 * overrides it here.
 */
export interface SweaterNumbers {
  /** t₀, the fabric that eases are said for. */
  readonly ordinaryThickness: number;
  /** The most of the chest's ease that the hip gets. */
  readonly hipEaseMost: number;
  readonly wristRoom: number;
  readonly armholeRoom: number;
  /** How much deeper than a set-in's the armhole is. */
  readonly deeper: { readonly drop: number; readonly squared: number };
  /** A crew's neck is the neck base's diameter and this wide. */
  readonly crewRoom: number;
  readonly easeBands: Readonly<Record<EaseCategory, readonly [from: number, to: number]>>;
}

/** Practice, but for the bands: Craft Yarn Council, Standards & Guidelines (from memory); the width of close and the end of oversized are assumed, as is t₀. */
export const SWEATER_NUMBERS: SweaterNumbers = {
  ordinaryThickness: 3,
  hipEaseMost: 25,
  wristRoom: 10,
  armholeRoom: 8,
  deeper: { drop: 25, squared: 15 },
  crewRoom: 25,
  easeBands: {
    'very-close': [-100, -50],
    close: [-25, 25],
    classic: [50, 100],
    loose: [100, 150],
    oversized: [150, 250],
  },
};
