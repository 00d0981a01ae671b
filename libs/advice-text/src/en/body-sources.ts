import type { BodySourceCodes } from '#body';
import type { Catalogue } from '../catalogue.ts';
import { ageText } from './age-text.ts';
import { commonSources } from './common-sources.ts';
import { allOf } from './all-of.ts';
import { inWords } from './in-words.ts';

/** Where a value of a body, or a note about it, is from; after it or in brackets. */
export const bodySources: Catalogue<BodySourceCodes> = {
  ...commonSources,
  'size-row': ({ row, mark }) => (mark === null ? row : `${row} (${mark})`),
  'body-model': ({ known, version }) => {
    const from = known.length === 0 ? 'with nothing measured' : `from ${allOf(known.map(inWords))}`;
    return `estimated ${from} (body model ${version}, US Army surveys of 1988 and 2012)`;
  },
  evidence: ({ known, sources, version }) => {
    const from = [...known.map(inWords), ...sources];
    return `estimated ${from.length === 0 ? 'with nothing known' : `from ${allOf(from)}`} (body model ${version}, US Army surveys of 1988 and 2012)`;
  },
  formula: ({ constantMm, times, of }) =>
    `${constantMm === 0 ? '' : `${constantMm} mm + `}${times} × ${inWords(of)} (assumed)`,
  'forearm-from-arm': () => '0.55 × (upper arm + wrist) (assumed)',
  'nape-to-cuff-from-arm': () => 'half the back + arm to the underarm + 0.6 × scye depth (assumed)',
  'wrist-from-age': ({ ageYears }) => `108 mm + 3.2 mm a year, at ${ageText(ageYears)} (assumed)`,
  'head-from-age': ({ ageYears }) => `growth references, middle at ${ageText(ageYears)} (from memory)`,
  surveys: () =>
    'US Army Anthropometric Surveys of 1988 and 2012 (NATICK/TR-89/044, NATICK/TR-15/007); US National Health and Nutrition Examination Survey 2017–2020',
};
