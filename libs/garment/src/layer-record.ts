import { THICKNESS_RECORD, type RecordOf, type RecordSchema } from '#measure';
import { LAYER_SLEEVES } from './garment.ts';

/** What is worn beneath, beyond a shirt. */
export const LAYER_RECORD = {
  thickness: { kind: 'record', fields: THICKNESS_RECORD },
  sleeves: { kind: 'choice', of: LAYER_SLEEVES, description: 'How far its sleeves reach.' },
} as const satisfies RecordSchema;
export type LayerRecord = RecordOf<typeof LAYER_RECORD>;
