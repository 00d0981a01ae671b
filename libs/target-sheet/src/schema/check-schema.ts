import { meaning } from '#advice-text';
import { ASSEMBLED_NAMES, CHECKS, PIECE_DIMENSION_NAMES, PIECES, VERDICTS } from '#fit';
import { bodyDimensionName } from './dimension-schema.ts';
import { listOf, number, objectOf, oneOf, text } from './json-schema.ts';
import { CODE_AND_PARAMS, codeAndParams } from './message-schema.ts';

const meanings = CHECKS.map((name) => `${name}: ${meaning('check', name)}`).join('; ') + '.';
const sized = 'in the sheet’s unit; a plain ratio for negative-ease, sleeve-taper and raglan-slope';

const remedySchema = objectOf(
  'A change of the design that would mend it.',
  {
    ...codeAndParams,
    text: text('In words.'),
    change: {
      type: 'object',
      description:
        'What to choose instead. A name that ends in Mm is a length in millimetres, whatever the sheet’s unit: in a request it is ' +
        'the design’s field of that name without Mm, as value and unit. rules/<name> is a number of that name among the rules. ' +
        'opening is a place: in a request, the at of the design’s opening. Any other is the design’s field of that name.',
      additionalProperties: { anyOf: [{ type: 'number' }, { type: 'string' }] },
    },
  },
  CODE_AND_PARAMS,
);

export const checkSchema = objectOf(
  'Whether it goes on and stays on: holds where need ≤ have. The numbers are absent where the verdict is unknown or n/a.',
  {
    check: oneOf(meanings, CHECKS),
    comfort: {
      type: 'boolean',
      description: 'A matter of comfort: it never fails, and limits no rounding.',
    },
    verdict: oneOf(
      'fine; tight: holds, but the chance that it does not is above 5 % (of comfort: 25 %); fails; poor: a matter of comfort that does not hold: it can be made and worn, and would not sit well; unknown: a measure is missing; n/a: does not apply.',
      VERDICTS,
    ),
    unit: oneOf('The unit of its numbers: that of the sheet; 1 for a ratio.', ['mm', 'cm', 'in', '1']),
    need: number(`What is needed, ${sized}.`),
    have: number(`What there is, ${sized}.`),
    margin: number(`have − need, ${sized}.`),
    u: number(`Standard uncertainty of the margin, ${sized}.`, { minimum: 0 }),
    chanceOfFailing: number('Probability that it does not hold, the making included.', { minimum: 0, maximum: 1 }),
    ...codeAndParams,
    advice: text('What to change, in words; may be empty.'),
    needs: listOf('The body measures that would settle it.', bodyDimensionName),
    remedies: listOf('Changes of the design that would mend it.', remedySchema),
  },
  ['need', 'have', 'margin', 'u', 'chanceOfFailing', ...CODE_AND_PARAMS, 'needs', 'remedies'],
);

const wishSchema = objectOf('One wish.', { ...codeAndParams, text: text('In words.') }, CODE_AND_PARAMS);

export const collisionSchema = objectOf('Two wishes that cannot both be had.', {
  wishes: { ...listOf('The two wishes.', wishSchema), minItems: 2, maxItems: 2 },
  piece: oneOf('Where they collide: on the finished garment, or on a piece.', ['assembled', ...PIECES]),
  dimension: oneOf('The dimension there.', [...new Set([...ASSEMBLED_NAMES, ...PIECE_DIMENSION_NAMES])]),
});
