import type { Response } from 'express';
import { etagOf } from '../http/if-match.ts';
import type { Page } from '../http/page.ts';
import type { RecordRow } from './record.entity.ts';

type KeptDocument<D> = D & Pick<RecordRow, 'id' | 'version' | 'createdAt' | 'updatedAt'>;

/** A record as the API shows it. */
export function keptDocument<D extends object>({
  id,
  version,
  createdAt,
  updatedAt,
  document,
}: RecordRow<D>): KeptDocument<D> {
  return { id, version, createdAt, updatedAt, ...document };
}

/** The same, with its version as the ETag of the answer. */
export function answerWith<D extends object>(response: Response, row: RecordRow<D>): KeptDocument<D> {
  response.set('ETag', etagOf(row.version));
  return keptDocument(row);
}

export function keptPage<D extends object>({ items, next }: Page<RecordRow<D>>): Page<KeptDocument<D>> {
  return { items: items.map(keptDocument), next };
}
