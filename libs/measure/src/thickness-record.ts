import { measuredFields } from './measured-fields.ts';
import type { RecordSchema } from './record-schema.ts';

/** The thickness of one layer of fabric, with its uncertainty where it is known. */
export const THICKNESS_RECORD = measuredFields({
  quantity: 'length',
  limits: { min: 0.2, max: 40, words: 'the thickness of one layer: 0.2 to 40 mm' },
}) satisfies RecordSchema;
