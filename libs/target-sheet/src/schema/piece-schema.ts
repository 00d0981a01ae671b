import { PIECES } from '#fit';
import { listOf, number, objectOf, oneOf, text, type JsonSchema } from './json-schema.ts';

export const pointSchema: JsonSchema = {
  type: 'array',
  description: '[x, y] in the sheet’s unit.',
  items: number('x to the right, or y up.'),
  minItems: 2,
  maxItems: 2,
};

export const joinSchema = objectOf('An edge that is joined to another piece.', {
  edge: text('Which edge of this piece; left and right are the wearer’s.'),
  with: oneOf('The piece it is joined to.', PIECES),
  length: number('Of the joined edge, in the sheet’s unit; the same on both pieces.', { minimum: 0 }),
});

const count = (description: string, minimum: number): JsonSchema => ({ type: 'integer', description, minimum });

export const pieceSchema = objectOf(
  'A piece to make.',
  {
    piece: oneOf('Which piece.', PIECES),
    make: count('How many in all.', 1),
    mirrored: count('How many of them are mirror images of the outline.', 0),
    workedFrom: oneOf('Which edge is the lower edge of the outline.', ['hem', 'cuff', 'edge']),
    outline: {
      type: 'array',
      description:
        'The shape as worn, without seam allowance: corners in order, counter-clockwise, y up, [0, 0] at the left end of the lower edge (x may go below 0 above it); the last joins the first. It does not cross itself. Absent where a value it needs has no advice.',
      items: { $ref: '#/$defs/point' },
      minItems: 3,
    },
    joins: listOf('Its edges that are joined to other pieces.', { $ref: '#/$defs/join' }),
    dimensions: listOf('Its named dimensions.', { $ref: '#/$defs/pieceDimension' }),
  },
  ['outline'],
);
