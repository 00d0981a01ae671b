import type { MessageOf } from '#measure';
import type { BodyDimension } from '../body-dimension.ts';
import type { SlipCode } from './repairs.ts';

/** One value is hard to believe. `smaller` than expected, else larger; `alone`: nothing else was measured. */
type UnlikelyValue = {
  readonly name: BodyDimension;
  readonly smaller: boolean;
  readonly alone: boolean;
};

/** What is asked about a value, or about two that may have changed places, by code. */
export type BodyQuestionCodes = {
  readonly [Code in SlipCode]: Code extends 'swapped-fields'
    ? { readonly name: BodyDimension; readonly other: BodyDimension }
    : UnlikelyValue;
};

export type BodyQuestion = MessageOf<BodyQuestionCodes>;
