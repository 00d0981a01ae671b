import { EntitySchema } from 'typeorm';

/** A key that lets a planner read sheets. The key itself is not kept, only its hash. */
export interface ReadKeyRow {
  id: string;
  makerId: string;
  /** The one sheet it opens; null for every sheet of its maker. */
  targetSheetId: string | null;
  createdAt: string;
  title: string;
  /** The first letters of the key, to know it by. */
  prefix: string;
  /** SHA-256 of the key, hexadecimal: it has 256 bits of chance in it, so a plain hash gives nothing away. */
  hash: string;
  expiresAt: string | null;
  revokedAt: string | null;
  lastUsedAt: string | null;
}

export const READ_KEY = new EntitySchema<ReadKeyRow>({
  name: 'read_key',
  columns: {
    id: { type: 'varchar', length: 36, primary: true },
    makerId: { type: 'varchar', length: 36, name: 'maker_id' },
    targetSheetId: { type: 'varchar', length: 36, name: 'target_sheet_id', nullable: true },
    createdAt: { type: 'varchar', length: 30, name: 'created_at' },
    title: { type: 'varchar', length: 120 },
    prefix: { type: 'varchar', length: 20 },
    hash: { type: 'varchar', length: 64 },
    expiresAt: { type: 'varchar', length: 30, name: 'expires_at', nullable: true },
    revokedAt: { type: 'varchar', length: 30, name: 'revoked_at', nullable: true },
    lastUsedAt: { type: 'varchar', length: 30, name: 'last_used_at', nullable: true },
  },
});
