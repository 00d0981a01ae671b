import { meaning } from '#advice-text';
import { BODY_DIMENSIONS } from '#body';
import { ASSEMBLED_NAMES, PIECES, PIECE_DIMENSION_NAMES, type DimensionName } from '#fit';
import { listOf, number, objectOf, oneOf, orNull, text, type JsonSchema } from './json-schema.ts';
import { CODE_AND_PARAMS, codeAndParams } from './message-schema.ts';

const meanings = (names: readonly DimensionName[]): string =>
  names.map((name) => `${name}: ${meaning('dimension', name)}`).join('; ') + '.';

export const becauseSchema = objectOf(
  'One reason of a value.',
  {
    ...codeAndParams,
    term: text('What it is, in words.'),
    value: number('What it adds to the value (negative: takes away), in the sheet’s unit.'),
    u: number('Its own standard uncertainty, in the sheet’s unit.', { minimum: 0 }),
    from: text('Where it is from: how it was measured, the publication, or “assumed”.'),
    fromCode: { ...codeAndParams.code, description: 'What from says: stable, lower-case with hyphens.' },
    fromParams: { ...codeAndParams.params, description: 'The values in from, by name.' },
  },
  [...CODE_AND_PARAMS, 'fromCode', 'fromParams'],
);

export const bodyDimensionName = oneOf(
  'A body dimension, in ISO 8559-1’s terms where it has one; girths go all the way round.',
  BODY_DIMENSIONS,
);

export const noAdviceSchema = objectOf(
  'Why there is no value.',
  {
    ...codeAndParams,
    needs: listOf('The body measures that would give one; may be empty.', bodyDimensionName),
    reason: text('In words.'),
  },
  CODE_AND_PARAMS,
);

const core = {
  value: orNull(
    number('As worn: washed, finished, laid flat, in the sheet’s unit; null where there is no advice.', { minimum: 0 }),
  ),
  u: number('Standard uncertainty of the value, in the sheet’s unit.', { minimum: 0 }),
  low: number('The least it may be rounded to, all else kept, in the sheet’s unit. low ≤ value.'),
  high: number('The most it may be rounded to, all else kept, in the sheet’s unit. value ≤ high.'),
  follows: listOf(
    'All that moves when this one is rounded, each by its slope times the change. Every other number of the sheet stays; what is a formula of the numbers alone, as the length of an edge, is worked out from them.',
    objectOf('A dimension that moves.', {
      piece: oneOf('The piece it stands on, or the finished garment.', ['assembled', ...PIECES]),
      name: oneOf('Its name there.', [...new Set([...ASSEMBLED_NAMES, ...PIECE_DIMENSION_NAMES])]),
      slope: number('Unit a unit; −0.5: half as much the other way.'),
    }),
  ),
  because: listOf('The terms that add up to the value; empty where there is none.', { $ref: '#/$defs/because' }),
  noAdvice: { $ref: '#/$defs/noAdvice' },
} as const satisfies Record<string, JsonSchema>;
const optional = ['u', 'low', 'high', 'follows', 'noAdvice'];

/** A value comes with its uncertainty and limits; none comes with the reason. */
const valueOrReason: JsonSchema = {
  if: { type: 'object', properties: { value: { type: 'null' } }, required: ['value'] },
  then: { type: 'object', properties: { noAdvice: {} }, required: ['noAdvice'] },
  else: { type: 'object', properties: { u: {}, low: {}, high: {} }, required: ['u', 'low', 'high'] },
};

export const assembledSchema: JsonSchema = {
  ...objectOf(
    'A dimension of the finished garment, laid flat.',
    { name: oneOf(meanings(ASSEMBLED_NAMES), ASSEMBLED_NAMES), ...core },
    optional,
  ),
  ...valueOrReason,
};

export const pieceDimensionSchema: JsonSchema = {
  ...objectOf(
    'A dimension of one piece, before it is joined.',
    {
      name: oneOf(meanings(PIECE_DIMENSION_NAMES), PIECE_DIMENSION_NAMES),
      axis: oneOf('across: stitches make it; along: rows make it.', ['across', 'along']),
      fabric: oneOf('Which gauge it is made in.', ['main', 'rib']),
      defining: {
        type: 'boolean',
        description: 'Round it by itself. Any other follows by an identity of its piece, or is derived.',
      },
      derived: {
        type: 'boolean',
        description: 'Worked out from the shape, as the length of an edge. Absent for all else.',
        const: true,
      },
      ...core,
      allowance: number('Seam allowance to add to the value, in the sheet’s unit; 0 for none.', { minimum: 0 }),
      asMade: orNull(
        number(
          '(value + allowance) ÷ (1 + growth): off the needles or hook, unwashed, in the sheet’s unit. For a gauge from an unwashed swatch only; with a washed swatch use value, else growth counts twice.',
          { minimum: 0 },
        ),
      ),
    },
    [...optional, 'derived'],
  ),
  ...valueOrReason,
};
