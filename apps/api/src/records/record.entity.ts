import { EntitySchema } from 'typeorm';

/** A kept record: a document written and read whole, as it was entered, and what the storage knows of it. */
export interface RecordRow<D = unknown> {
  /** UUID v7, made here: ids sort by the time they were made. */
  id: string;
  makerId: string;
  /** 1 when made, one more with each change; the ETag. */
  version: number;
  /** RFC 3339, UTC. */
  createdAt: string;
  updatedAt: string;
  document: D;
}

export const RECORD_COLUMNS = {
  id: { type: 'varchar', length: 36, primary: true },
  makerId: { type: 'varchar', length: 36, name: 'maker_id' },
  version: { type: 'integer' },
  createdAt: { type: 'varchar', length: 30, name: 'created_at' },
  updatedAt: { type: 'varchar', length: 30, name: 'updated_at' },
  document: { type: 'simple-json' },
} as const;

function recordEntity(name: string): EntitySchema<RecordRow> {
  return new EntitySchema<RecordRow>({ name, columns: RECORD_COLUMNS });
}

export const BODY = recordEntity('body');
export const GARMENT = recordEntity('garment');
export const FABRIC = recordEntity('fabric');
