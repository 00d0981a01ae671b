import { ApiProperty } from '@nestjs/swagger';
import { IdField, TextField } from '../../http/fields.ts';
import { TimeField } from '../../http/time-field.ts';
import type { ReadKeyRow } from './read-key.entity.ts';
import type { MadeKey } from './read-keys.ts';

const ID = { type: 'string', format: 'uuid' } as const;
const TIME = { type: 'string', format: 'date-time' } as const;

/** What a new key is for. */
export class ReadKeyDto {
  @TextField({ max: 120, description: 'For whom or what it is.', example: 'Row by row' })
  title!: string;
  @IdField({ optional: true, description: 'The one sheet it opens; without it, every sheet.' })
  targetSheetId?: string | null;
  @TimeField('Until when it opens anything; without it, until it is revoked.')
  expiresAt?: string | null;
}

/** A key, without what opens. */
export class KeptReadKey {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty(TIME)
  createdAt!: string;
  @ApiProperty({ type: 'string' })
  title!: string;
  @ApiProperty({ type: 'string', description: 'How the key begins, to know it by.' })
  prefix!: string;
  @ApiProperty({ ...ID, nullable: true, description: 'The one sheet it opens; null for every sheet.' })
  targetSheetId!: string | null;
  @ApiProperty({ ...TIME, nullable: true })
  expiresAt!: string | null;
  @ApiProperty({ ...TIME, nullable: true })
  revokedAt!: string | null;
  @ApiProperty({ ...TIME, nullable: true, description: 'To the minute.' })
  lastUsedAt!: string | null;
}

export class NewReadKey extends KeptReadKey {
  @ApiProperty({ type: 'string', description: 'The key, shown this once: `Authorization: Bearer` and this.' })
  key!: string;
}

export class ReadKeyPage {
  @ApiProperty({ type: () => KeptReadKey, isArray: true })
  items!: KeptReadKey[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}

export function keptReadKey(row: ReadKeyRow): KeptReadKey {
  const { id, createdAt, title, prefix, targetSheetId, expiresAt, revokedAt, lastUsedAt } = row;
  return { id, createdAt, title, prefix, targetSheetId, expiresAt, revokedAt, lastUsedAt };
}

export const newReadKey = ({ row, key }: MadeKey): NewReadKey => ({ ...keptReadKey(row), key });
