import { measuredFields, TAKEN_FIELDS, type RecordOf, type RecordSchema, type StoredRecord } from '#measure';
import { BODY_DIMENSIONS } from './body-dimension.ts';
import { FIGURES, type Figure } from './body.ts';
import { publishedSizes } from './sizes/size-tables.ts';

export const FIGURE_DEFAULT: Figure = 'unsaid';

/** One measurement of a body. What a person may be is another question: see `bodyProblems`. */
export const BODY_MEASURE_RECORD = {
  name: {
    kind: 'choice',
    of: BODY_DIMENSIONS,
    description: 'ISO 8559-1’s term where it has one.',
    example: 'chest-girth',
  },
  ...measuredFields({
    quantity: 'length',
    limits: { min: 1, max: 5000, words: 'from 1 mm to 5 m' },
    instead: {
      field: 'name',
      is: 'weight',
      quantity: 'mass',
      limits: { min: 500, max: 500_000, words: 'from 0.5 to 500 kg' },
    },
  }),
  ...TAKEN_FIELDS,
} as const satisfies RecordSchema;

/** A size that somebody buys. */
export const BODY_SIZE_RECORD = {
  table: {
    kind: 'choice',
    of: publishedSizes().map(({ id }) => id),
    description: 'Id of a published table: see /v1/sizes.',
    example: 'craft-yarn-council-woman',
  },
  size: { kind: 'text', max: 20, description: 'As it is printed there.', example: 'M' },
} as const satisfies RecordSchema;

/** A body, as the maker gives it. */
export const BODY_RECORD = {
  title: {
    kind: 'text',
    max: 120,
    optional: true,
    description: 'What the maker calls it.',
    example: 'Me, in spring',
  },
  figure: { kind: 'choice', of: FIGURES, optional: true, default: FIGURE_DEFAULT },
  age: { kind: 'number', min: 0, max: 120, optional: true, description: 'In years; fractions for babies.' },
  size: {
    kind: 'record',
    fields: BODY_SIZE_RECORD,
    optional: true,
    description: 'The size that is bought: it stands for every measure of its row that was not taken.',
  },
  estimate: {
    kind: 'yes-no',
    optional: true,
    default: true,
    description: 'Whether what was not measured may be estimated.',
  },
  measures: { kind: 'list', items: BODY_MEASURE_RECORD, max: 100, distinct: ['name'] },
} as const satisfies RecordSchema;

/** A body as a maker gives it, and as it is stored. */
export type BodyRecord = RecordOf<typeof BODY_RECORD>;
export type StoredBody = StoredRecord<typeof BODY_RECORD>;
