import { readMeasured } from '#measure';
import type { MadePiece } from '../messages/advice.ts';
import type { MadePieceRecord } from './made-record.ts';

/** A finished piece in mm. @throws DomainError where its length cannot be read */
export const madeFromRecord = (record: MadePieceRecord): MadePiece => ({
  piece: record.piece,
  name: record.name,
  value: readMeasured(record, 'length').size,
});
