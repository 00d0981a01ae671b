import type { BodyDimension, BodyProfile } from '#body';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength, showNumber } from '../reading/numbers.ts';

/** 90 of 100 lie within so many standard uncertainties. */
export const NINETY = 1.645;
const POUND_GRAMS = 453.59237;

const shown = (value: number, dimension: BodyDimension, tape: Tape): string =>
  dimension !== 'weight'
    ? showLength(value, tape)
    : tape === 'cm'
      ? `${showNumber(value / 1000)} kg`
      : `${showNumber(value / POUND_GRAMS)} lb`;

export interface Shown {
  readonly value: string;
  readonly low: string;
  readonly high: string;
  readonly measured: boolean;
  readonly from: string;
}

/** A body value as it is shown, with the range that holds it nine times in ten; null where there is none. */
export function shownValue(profile: BodyProfile | null, dimension: BodyDimension, tape: Tape): Shown | null {
  const found = profile?.values[dimension];
  if (found === undefined) return null;
  const away = NINETY * found.u;
  return {
    value: shown(found.value, dimension, tape),
    low: shown(found.value - away, dimension, tape),
    high: shown(found.value + away, dimension, tape),
    measured: found.how === 'home' || found.how === 'trained',
    from: found.from,
  };
}

/** The estimate of a measure that was skipped, in words. */
export function pencilled(profile: BodyProfile | null, dimension: BodyDimension, tape: Tape): string | null {
  const found = shownValue(profile, dimension, tape);
  if (found === null) return profile === null ? null : say.body.noEstimate;
  return say.body.estimate(found.value, found.low, found.high);
}
