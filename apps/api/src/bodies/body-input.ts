import type { Body, BodyDimension, Figure } from '#body';
import type { How } from '#measure';
import type { Measured } from '../measures/measured.ts';
import type { Reading } from '../measures/measured-field.ts';
import { LENGTH, MASS } from '../measures/quantity-kind.ts';
import { readMeasured } from '../measures/read-measured.ts';
import { HOW_DEFAULT } from '../measures/taken.ts';

export const FIGURE_DEFAULT: Figure = 'unsaid';

/** A body as entered, in a request or kept. */
export interface BodyEntered {
  readonly figure?: Figure | null;
  readonly age?: number | null;
  readonly measures: readonly (Measured & { readonly name: BodyDimension; readonly how?: How | null })[];
}

/** How a body measure is read: lengths up to 5 m, weight up to 500 kg. What a person may be, `#body` knows. */
export function readingOfBody(measure: Measured): Reading {
  return (measure as { name?: unknown }).name === 'weight'
    ? { kind: MASS, limits: { min: 500, max: 500_000, words: 'from 0.5 to 500 kg' } }
    : { kind: LENGTH, limits: { min: 1, max: 5000, words: 'from 1 mm to 5 m' } };
}

/** The body in mm and g. */
export function bodyInput({ figure, age, measures }: BodyEntered): Body {
  return {
    figure: figure ?? FIGURE_DEFAULT,
    ageYears: age ?? null,
    measures: measures.map((measure) => {
      const { size, u } = readMeasured(measure, readingOfBody(measure).kind);
      const read = { name: measure.name, value: size, how: measure.how ?? HOW_DEFAULT };
      return u === undefined ? read : { ...read, u };
    }),
  };
}
