import type { Note } from '#measure';
import { dimensionText } from '../dimension-text.ts';
import type { BodyModelCoefficients } from './coefficients.ts';

const SURVEYS =
  'US Army Anthropometric Surveys of 1988 and 2012 (NATICK/TR-89/044, NATICK/TR-15/007); US National Health and Nutrition Examination Survey 2017–2020';

/** What has to stand beside every estimate: whom the model was made from, and whom not. */
export const WHOM_IT_WAS_MADE_FROM: Note = {
  code: 'body-model-made-from',
  text: 'Estimates come from adult soldiers of 17 to 58, most of them under 35. Nobody in plus sizes, over 60, pregnant, or a child is among them: the intervals are widened for that, and where a body lies outside their sizes the answer is "measure it". Waist and hip are corrected for age from a survey of civilians up to 80.',
  source: SURVEYS,
};

/** The oldest the surveys hold, years. */
export const OLDEST = 58;

/** Beside the estimates for a body older than that. */
export const BEYOND_THE_OLDEST: Note = {
  code: 'body-model-age',
  text: `Nobody over ${OLDEST} is among those the estimates come from. Waist and hip are corrected for age; measure whatever else you can.`,
  source: SURVEYS,
};

/** How each dimension of the model that is not the surveys' own measure was made, a note each. */
export function mappingNotes({ mappings }: BodyModelCoefficients): readonly Note[] {
  return mappings.map(({ name, from, reason, source }) => ({
    code: `body-model-${name}`,
    text: `${capital(dimensionText(name))}: from ${from}. ${reason}`,
    source,
  }));
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
