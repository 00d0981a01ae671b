import { EntitySchema } from 'typeorm';

/** What was made for a request that can be sent again, so that it is made once. Kept for a day. */
interface IdempotentWriteRow {
  id: string;
  makerId: string;
  /** The request's Idempotency-Key. */
  key: string;
  /** Of the request, so that the same key is not used for another. */
  fingerprint: string;
  createdAt: string;
  /** The id of what was made: when that is erased, this goes too. */
  madeId: string;
  /** What was made, sealed: it may hold a secret that is shown once. */
  made: string;
}

export const IDEMPOTENT_WRITE = new EntitySchema<IdempotentWriteRow>({
  name: 'idempotent_write',
  columns: {
    id: { type: 'varchar', length: 36, primary: true },
    makerId: { type: 'varchar', length: 36, name: 'maker_id' },
    key: { type: 'varchar', length: 200, name: 'idempotency_key' },
    fingerprint: { type: 'varchar', length: 64 },
    createdAt: { type: 'varchar', length: 30, name: 'created_at' },
    madeId: { type: 'varchar', length: 36, name: 'made_id' },
    made: { type: 'text' },
  },
});
