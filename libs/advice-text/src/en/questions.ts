import type { BodyQuestionCodes } from '#body';
import type { GarmentQuestionCodes } from '#garment';
import type { Catalogue } from '../catalogue.ts';
import { inWords } from './in-words.ts';

const aboutBody =
  (question: string) =>
  ({ name, smaller, alone }: BodyQuestionCodes['unlikely']): string => {
    const expected = alone ? 'that of nearly every adult surveyed' : 'the other measures lead one to expect';
    return `The ${inWords(name)} is ${smaller ? 'smaller' : 'larger'} than ${expected}. ${question}`;
  };

/** What a maker is asked about a measure of a body; the value it would become stands beside it. */
export const bodyQuestions: Catalogue<BodyQuestionCodes> = {
  'inches-as-centimetres': aboutBody('Were these inches, typed as centimetres?'),
  'centimetres-as-inches': aboutBody('Were these centimetres, typed as inches?'),
  'pounds-as-kilograms': aboutBody('Were these pounds, typed as kilograms?'),
  'half-girth': aboutBody('Is it half of the way round, measured flat?'),
  'swapped-digits': aboutBody('Have two digits changed places?'),
  'swapped-fields': ({ name, other }) =>
    `The ${inWords(name)} and the ${inWords(other)} fit the rest better the other way round. Have they changed places?`,
  unlikely: aboutBody('Please read the tape once more.'),
};

const aboutGarment =
  (question: string) =>
  ({ name, smaller, comparedWith }: GarmentQuestionCodes['girth-for-width']): string => {
    const other = comparedWith === 'body' ? 'the body that wears it' : 'the rest';
    return `The ${inWords(name)} is very ${smaller ? 'small' : 'large'} for ${other}. ${question}`;
  };

/** What a maker is asked about a measure of a garment. */
export const garmentQuestions: Catalogue<GarmentQuestionCodes> = {
  'girth-for-width': aboutGarment('Was it measured all the way round? Laid flat it is half of that.'),
  'half-for-width': aboutGarment('Was it measured on the folded garment? Whole, it is twice that.'),
  'inches-for-cm': aboutGarment('Was it read in inches and written as centimetres?'),
  'cm-for-inches': aboutGarment('Was it read in centimetres and written as inches?'),
};
