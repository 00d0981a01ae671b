import { chosenFields, type RecordOf, type RecordSchema, type StoredRecord } from '#measure';
import { PIECE_DIMENSION_NAMES, PIECES } from '../messages/advice.ts';

/** A finished piece as measured: flat, washed, no allowance. */
export const MADE_PIECE_RECORD = {
  piece: { kind: 'choice', of: PIECES },
  name: { kind: 'choice', of: PIECE_DIMENSION_NAMES },
  ...chosenFields({ quantity: 'length', limits: { min: 1, max: 3000, words: 'from 1 mm to 3 m' } }),
} as const satisfies RecordSchema;
export type MadePieceRecord = RecordOf<typeof MADE_PIECE_RECORD>;
export type StoredMadePiece = StoredRecord<typeof MADE_PIECE_RECORD>;
