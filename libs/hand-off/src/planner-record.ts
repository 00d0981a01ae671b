import type { RecordSchema } from '#measure';
import { SHEET_UNITS } from '#target-sheet';
import { PLANNER_FORMATS } from './planner-takes.ts';

/** What a planner takes in. */
export const TAKES_RECORD = {
  unit: {
    kind: 'choice',
    of: SHEET_UNITS,
    optional: true,
    default: 'mm',
    description: 'Of every length it is sent.',
  },
  roundingStep: {
    kind: 'number',
    optional: true,
    min: 0,
    max: 100,
    description:
      'Lengths go as whole multiples of it, in `unit`, within how far each may be rounded; null leaves them.',
    example: 0.25,
  },
  format: {
    kind: 'choice',
    of: PLANNER_FORMATS,
    optional: true,
    default: 'flat',
    description: 'sheet: the target sheet itself (pushed as a link); flat: one JSON value of named fields; csv.',
  },
  names: {
    kind: 'names',
    optional: true,
    max: 200,
    longestName: 80,
    longest: 300,
    description:
      'Our name to the planner’s: a JSON Pointer (flat) or a column (csv). Empty sends everything under our names.',
    example: { 'assembled/chest-width': '/sweater/width', 'sleeve/sleeve-length/as-made': '/sweater/sleeve' },
  },
  required: {
    kind: 'texts',
    optional: true,
    max: 200,
    longest: 80,
    description: 'Our names without which the planner cannot work: a sheet that lacks one is not sent.',
    example: ['assembled/chest-width'],
  },
} as const satisfies RecordSchema;

/** A planner, as the maker registers it. */
export const PLANNER_RECORD = {
  title: { kind: 'text', max: 120, description: 'What the maker calls it.', example: 'Row by row' },
  address: {
    kind: 'text',
    optional: true,
    max: 2000,
    description: 'Where hand-offs are posted to, https. Without it the planner pulls, or is handed sheets by hand.',
    example: 'https://planner.example/take',
  },
  takes: { kind: 'record', fields: TAKES_RECORD, optional: true },
} as const satisfies RecordSchema;
