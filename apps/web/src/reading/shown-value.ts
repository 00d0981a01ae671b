import type { BodyDimension, BodyProfile } from '#body';
import { isMeasured, type How } from '#measure';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength, showNumber, withoutUnit } from './numbers.ts';

/** 90 % of values lie within this many standard uncertainties. */
const NINETY = 1.645;
const POUND_GRAMS = 453.59237;

/** A measurement in the unit of its tape or scale. */
export const showMeasure = (value: number, dimension: BodyDimension, tape: Tape): string =>
  dimension !== 'weight'
    ? showLength(value, tape)
    : tape === 'cm'
      ? `${showNumber(value / 1000)} kg`
      : `${showNumber(value / POUND_GRAMS)} lb`;

interface Shown {
  readonly value: string;
  /** The value and its lower end without their unit, for a line that shows the unit once. */
  readonly bare: readonly [value: string, low: string];
  readonly low: string;
  readonly high: string;
  readonly how: How;
}

/** A body value as text, with its 90 % range; null where there is none. */
export function shownValue(profile: BodyProfile | null, dimension: BodyDimension, tape: Tape): Shown | null {
  const found = profile?.values[dimension];
  if (found === undefined) return null;
  const away = NINETY * found.u;
  const [value, low] = [showMeasure(found.value, dimension, tape), showMeasure(found.value - away, dimension, tape)];
  return {
    value,
    low,
    bare: [withoutUnit(value), withoutUnit(low)],
    high: showMeasure(found.value + away, dimension, tape),
    how: found.how,
  };
}

/** The estimate of a missing measurement, in words; null where there is no estimate, empty while nothing is entered. */
export function pencilled(profile: BodyProfile | null, dimension: BodyDimension, tape: Tape): string | null {
  if (profile === null) return '';
  const found = shownValue(profile, dimension, tape);
  if (found === null) return null;
  if (isMeasured(found.how)) return '';
  const estimate = say.body.estimate(...found.bare, found.high);
  return profile.values[dimension]?.outsideSurveys ? say.body.outsideSurveys(estimate) : estimate;
}
