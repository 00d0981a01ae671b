import type { BodyDimension } from '../body-dimension.ts';
import { dimensionText } from '../dimension-text.ts';
import type { SlipCode } from './repairs.ts';

const ASK: Readonly<Record<Exclude<SlipCode, 'swapped-fields'>, string>> = {
  'inches-as-centimetres': 'Were these inches, typed as centimetres?',
  'centimetres-as-inches': 'Were these centimetres, typed as inches?',
  'pounds-as-kilograms': 'Were these pounds, typed as kilograms?',
  'half-girth': 'Is it half of the way round, measured flat?',
  'swapped-digits': 'Have two digits changed places?',
  unlikely: 'Please read the tape once more.',
};

/** A question in a maker's words; the page shows the value it would become beside it. `z` below 0: smaller than expected. `alone`: nothing else was measured. */
export function questionText(
  code: SlipCode,
  name: BodyDimension,
  other: BodyDimension | null,
  z: number,
  alone: boolean,
): string {
  if (code === 'swapped-fields' && other !== null) {
    return `The ${dimensionText(name)} and the ${dimensionText(other)} fit the rest better the other way round. Have they changed places?`;
  }
  const expected = alone ? 'that of nearly every adult surveyed' : 'the other measures lead one to expect';
  const than = `The ${dimensionText(name)} is ${z < 0 ? 'smaller' : 'larger'} than ${expected}.`;
  return `${than} ${ASK[code as keyof typeof ASK]}`;
}
