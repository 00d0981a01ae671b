import { HOWS, type How } from './how.ts';
import type { RecordSchema } from './record-schema.ts';

export const HOW_DEFAULT: How = 'home';

/** By whom and when a measure was taken. */
export const TAKEN_FIELDS = {
  how: {
    kind: 'choice',
    of: HOWS,
    optional: true,
    default: HOW_DEFAULT,
    description: 'By whom or whence: sets its uncertainty where none is given.',
  },
  takenAt: {
    kind: 'day-or-time',
    optional: true,
    example: '2026-01-31',
    description: 'A day, or a time with its offset (RFC 3339).',
  },
} as const satisfies RecordSchema;
