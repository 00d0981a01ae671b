import {
  measuredFields,
  TAKEN_FIELDS,
  THICKNESS_RECORD,
  type RecordOf,
  type RecordSchema,
  type StoredRecord,
} from '#measure';
import { GARMENT_DIMENSIONS } from './garment-dimension.ts';
import { EASE_CATEGORIES } from './ease-category.ts';
import { CONSTRUCTIONS, SLEEVES, WEARS } from './garment.ts';
import { LAYER_RECORD } from './layer-record.ts';
import { NECKLINES } from './neckline.ts';

/** From which place a sleeve is measured. */
export const SLEEVE_FROM = ['seam', 'centre-back'] as const;

/** One measurement of a garment laid flat. */
export const GARMENT_MEASURE_RECORD = {
  name: { kind: 'choice', of: GARMENT_DIMENSIONS, example: 'chest-width' },
  ...measuredFields({ quantity: 'length', limits: { min: 1, max: 3000, words: 'from 1 mm to 3 m' } }),
  ...TAKEN_FIELDS,
  from: {
    kind: 'choice',
    of: SLEEVE_FROM,
    optional: true,
    default: 'seam',
    onlyWhere: { field: 'name', is: 'sleeve-length' },
    description: 'Of `sleeve-length` alone: where it was measured from.',
  },
  confirmed: {
    kind: 'yes-no',
    optional: true,
    default: false,
    description: 'Whether it was measured again and is right: then nothing is asked about it, and it counts in full.',
  },
} as const satisfies RecordSchema;

const HOW_IT_WEARS = { kind: 'choice', of: WEARS, optional: true } as const;

/** How a garment wears, region by region. */
export const WEARS_RECORD = {
  chest: HOW_IT_WEARS,
  hip: HOW_IT_WEARS,
  'across-back': HOW_IT_WEARS,
  armhole: HOW_IT_WEARS,
  'upper-arm': HOW_IT_WEARS,
  sleeve: HOW_IT_WEARS,
  cuff: HOW_IT_WEARS,
  neck: HOW_IT_WEARS,
  length: HOW_IT_WEARS,
} as const satisfies RecordSchema;

/** A garment that fits, laid flat, closed, smoothed and not stretched. */
export const GARMENT_RECORD = {
  title: { kind: 'text', max: 120, optional: true, description: 'What the maker calls it.', example: 'The blue one' },
  construction: { kind: 'choice', of: CONSTRUCTIONS },
  measures: { kind: 'list', items: GARMENT_MEASURE_RECORD, max: 100, distinct: ['name'] },
  thickness: {
    kind: 'record',
    fields: THICKNESS_RECORD,
    description: 'Of one layer of its fabric: four layers under a small book, divided by four.',
  },
  layer: {
    kind: 'record',
    fields: LAYER_RECORD,
    optional: true,
    description: 'What she wears beneath it when it fits.',
  },
  wornStretched: {
    kind: 'yes-no',
    optional: true,
    default: false,
    description: 'Whether it is stretched when worn.',
  },
  fits: { kind: 'choice', of: EASE_CATEGORIES, optional: true, description: 'How closely it fits.' },
  neckline: { kind: 'choice', of: NECKLINES, optional: true },
  sleeve: { kind: 'choice', of: SLEEVES, optional: true, default: 'long', description: 'How long its sleeves are.' },
  wears: {
    kind: 'record',
    fields: WEARS_RECORD,
    sparse: true,
    optional: true,
    description: 'How it wears, where she can say so.',
  },
  madeFrom: {
    kind: 'id',
    optional: true,
    description: 'Of the kept target sheet that it was made from: what it measures now tells how its yarn grows.',
  },
} as const satisfies RecordSchema;

/** A garment as a maker gives it, and as it is stored. */
export type GarmentRecord = RecordOf<typeof GARMENT_RECORD>;
export type StoredGarment = StoredRecord<typeof GARMENT_RECORD>;
