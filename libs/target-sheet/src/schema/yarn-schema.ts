import { PIECES } from '#fit';
import { listOf, number, objectOf, oneOf, text, type JsonSchema } from './json-schema.ts';
import { codeAndParams } from './message-schema.ts';

const amount = (description: string, unit: string): JsonSchema =>
  objectOf(description, {
    value: number('How much.', { minimum: 0 }),
    u: number('Its standard uncertainty.', { minimum: 0 }),
    unit: { type: 'string', description: 'Whatever the sheet’s unit of length.', const: unit },
  });

const amounts = {
  area: number('Of the fabric, m², whatever the sheet’s unit.', { minimum: 0 }),
  mass: amount('Of the yarn, with nothing to spare.', 'g'),
  length: amount('Of the yarn, with nothing to spare; absent where its length by weight is not known.', 'm'),
};

export const yarnSchema = objectOf(
  'The yarn that the drawn pieces take.',
  {
    ...amounts,
    from: text('Where the fabric’s weight is from; rough ones say so.'),
    fromCode: text('The same as a stable code.'),
    fromParams: { type: 'object', description: 'The values in it.' },
    pieces: listOf(
      'The same piece by piece, all copies of one together.',
      objectOf('The yarn of a piece.', { piece: oneOf('Which piece.', PIECES), ...amounts }, ['length']),
    ),
    spare: objectOf('What is usual to have more; it is not in the numbers.', {
      ...codeAndParams,
      text: text('In words.'),
    }),
  },
  ['length'],
);
