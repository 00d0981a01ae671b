import { CRAFTS, STITCHES } from '#fabric';
import { FORMAT, SCHEMA_ID, SHEET_UNITS } from '../target-sheet.ts';
import { checkSchema, collisionSchema } from './check-schema.ts';
import { designSchema } from './design-schema.ts';
import { assembledSchema, becauseSchema, noAdviceSchema, pieceDimensionSchema } from './dimension-schema.ts';
import { fabricSchema } from './fabric-schema.ts';
import { listOf, objectOf, oneOf, orNull, text, type JsonSchema } from './json-schema.ts';
import { codeAndParams } from './message-schema.ts';
import { edgeSchema, identitySchema, joinSchema, pieceSchema, pointSchema, regionSchema } from './piece-schema.ts';
import { yarnSchema } from './yarn-schema.ts';

/** Longest title, in characters (Unicode code points). */
export const MAX_TITLE = 200;

const noteSchema = objectOf(
  'Something to tell the maker.',
  {
    ...codeAndParams,
    text: text('In words.'),
    source: text('Where it is from.'),
  },
  ['params', 'source'],
);

/**
 * JSON Schema 2020-12 of the target sheet, version 1. It says all that a planner needs. Names and other closed lists
 * stay as they are in every 1.x; a newer minor may add fields, so unknown ones are let through.
 */
export const targetSheetSchema: JsonSchema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: SCHEMA_ID,
  title: 'Target sheet, version 1',
  ...objectOf(
    'The finished measurements of a hand-made sweater and of each of its pieces, with how sure they are and what may still go wrong. Every length is in the unit that `unit` names, unrounded; fractions and probabilities are plain numbers. To make the garment, read `pieces`; to show it, read `assembled`. Ignore fields you do not know: a newer 1.x may add some.',
    {
      format: { type: 'string', description: 'What this document is.', const: FORMAT },
      version: {
        type: 'string',
        description: 'major.minor. Every 1.x can be read by this schema.',
        pattern: '^1\\.(0|[1-9][0-9]*)$',
      },
      id: { type: 'string', description: 'Of this sheet, for good.', minLength: 1 },
      createdAt: {
        type: 'string',
        description: 'When it was made: RFC 3339, UTC.',
        pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]+)?Z$',
      },
      title: { type: 'string', description: 'The maker’s own; may be empty.', maxLength: MAX_TITLE },
      unit: oneOf('The unit of every length: millimetres, centimetres or inches of 25.4 mm.', SHEET_UNITS),
      craft: oneOf('How it is made.', CRAFTS),
      stitch: orNull(oneOf('The stitch of the main fabric; null where none was said.', STITCHES)),
      rulesVersion: text('Version of the rules the sheet was made with.'),
      design: { $ref: '#/$defs/design' },
      fabric: { $ref: '#/$defs/fabric' },
      yarn: { $ref: '#/$defs/yarn' },
      assembled: listOf('Dimensions of the finished garment.', { $ref: '#/$defs/assembledDimension' }),
      pieces: listOf('The pieces to make.', { $ref: '#/$defs/piece' }),
      checks: listOf('Whether it goes on and stays on.', { $ref: '#/$defs/check' }),
      collisions: listOf('Wishes that cannot all be had.', { $ref: '#/$defs/collision' }),
      cautions: listOf('Where the work can hurt someone. Always show them.', { $ref: '#/$defs/note' }),
      notes: listOf('What else to know.', { $ref: '#/$defs/note' }),
    },
    ['yarn'],
  ),
  $defs: {
    design: designSchema,
    fabric: fabricSchema,
    yarn: yarnSchema,
    because: becauseSchema,
    noAdvice: noAdviceSchema,
    assembledDimension: assembledSchema,
    pieceDimension: pieceDimensionSchema,
    point: pointSchema,
    join: joinSchema,
    edge: edgeSchema,
    region: regionSchema,
    identity: identitySchema,
    piece: pieceSchema,
    check: checkSchema,
    collision: collisionSchema,
    note: noteSchema,
  },
};
