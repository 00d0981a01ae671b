import type { components } from '../api.generated.ts';
import type { Kind, Kinds } from '../notebook/kinds.ts';
import type { BodyNotes, GarmentNotes, YarnNotes } from '../notebook/notebook.ts';
import { fromBodyRecord } from '../reading/body-record.ts';
import { fromGarmentRecord } from '../reading/garment-record.ts';
import { fromYarnRecord } from '../reading/yarn-record.ts';
import { TO_RECORD } from '../records/to-record.ts';
import { client } from './client.ts';

type Schemas = components['schemas'];

/** A stored entry, converted to notes. */
export interface Kept<T> {
  readonly id: string;
  readonly etag: string;
  readonly notes: T;
}

/** The result of a request: the stored entry, or the status and the reason of the rejection. */
export type Answer<T> =
  { readonly is: 'kept'; readonly kept: T } | { readonly is: 'not'; readonly status: number; readonly why: string };

/** The requests for one kind of record. Every call throws when the server cannot be reached. */
interface RecordRepository<T> {
  readonly list: () => Promise<readonly Kept<T>[]>;
  readonly one: (id: string) => Promise<Answer<Kept<T>>>;
  readonly add: (notes: T) => Promise<Answer<Kept<T>>>;
  readonly put: (id: string, etag: string, notes: T) => Promise<Answer<Kept<T>>>;
  readonly remove: (id: string, etag: string) => Promise<void>;
}

interface Problem {
  readonly detail?: string | undefined;
  readonly errors?: readonly { readonly detail: string }[];
}
type Result<R> = { readonly data?: R | undefined; readonly error?: Problem | undefined; readonly response: Response };
type Versioned = { readonly id: string; readonly version: number };

const etagOf = ({ version }: Versioned): string => `"${version}"`;

/** A server error is treated like a lost connection: nothing is wrong with the entry. */
function throwIfUnavailable<R>({ response }: Result<R>): void {
  if (response.status >= 500) throw new Error(`The store answered ${response.status}.`);
}

function answer<R extends Versioned, T>(result: Result<R>, from: (record: R) => T): Answer<Kept<T>> {
  throwIfUnavailable(result);
  if (result.data !== undefined)
    return { is: 'kept', kept: { id: result.data.id, etag: etagOf(result.data), notes: from(result.data) } };
  const details = result.error?.errors?.map(({ detail }) => detail) ?? [];
  const why = [...new Set(details)].join(' ') || (result.error?.detail ?? String(result.response.status));
  return { is: 'not', status: result.response.status, why };
}

async function everyPage<R extends Versioned, T>(
  page: (cursor: string | undefined) => Promise<Result<{ readonly items: readonly R[]; readonly next: string | null }>>,
  from: (record: R) => T,
): Promise<Kept<T>[]> {
  const all: Kept<T>[] = [];
  let cursor: string | undefined;
  do {
    const result = await page(cursor);
    throwIfUnavailable(result);
    if (result.data === undefined) throw new Error('The store gave no list.');
    all.push(...result.data.items.map((record) => ({ id: record.id, etag: etagOf(record), notes: from(record) })));
    cursor = result.data.next ?? undefined;
  } while (cursor !== undefined);
  return all;
}

const query = (cursor: string | undefined) => ({
  params: { query: { limit: 100, ...(cursor === undefined ? {} : { cursor }) } },
});
const at = (id: string) => ({ params: { path: { id } } });
const ifMatch = (id: string, etag: string) => ({ params: { path: { id }, header: { 'If-Match': etag } } });

/** The tables of sizes that the API names are those that the libs have. */
function bodyDto(notes: BodyNotes): Schemas['BodyDto'] {
  const { size, ...body } = TO_RECORD.bodies(notes);
  return { ...body, size: (size ?? null) as Extract<Schemas['BodyDto']['size'], object> | null };
}

const bodies: RecordRepository<Kinds['bodies']> = {
  list: () =>
    everyPage<Schemas['KeptBody'], BodyNotes>((cursor) => client.GET('/v1/bodies', query(cursor)), fromBodyRecord),
  one: async (id) => answer(await client.GET('/v1/bodies/{id}', at(id)), fromBodyRecord),
  add: async (notes) => answer(await client.POST('/v1/bodies', { body: bodyDto(notes) }), fromBodyRecord),
  put: async (id, etag, notes) =>
    answer(await client.PUT('/v1/bodies/{id}', { ...ifMatch(id, etag), body: bodyDto(notes) }), fromBodyRecord),
  remove: async (id, etag) => throwIfUnavailable(await client.DELETE('/v1/bodies/{id}', ifMatch(id, etag))),
};

const garments: RecordRepository<Kinds['garments']> = {
  list: () =>
    everyPage<Schemas['KeptGarment'], GarmentNotes>(
      (cursor) => client.GET('/v1/garments', query(cursor)),
      fromGarmentRecord,
    ),
  one: async (id) => answer(await client.GET('/v1/garments/{id}', at(id)), fromGarmentRecord),
  add: async (notes) =>
    answer(await client.POST('/v1/garments', { body: TO_RECORD.garments(notes) }), fromGarmentRecord),
  put: async (id, etag, notes) =>
    answer(
      await client.PUT('/v1/garments/{id}', { ...ifMatch(id, etag), body: TO_RECORD.garments(notes) }),
      fromGarmentRecord,
    ),
  remove: async (id, etag) => throwIfUnavailable(await client.DELETE('/v1/garments/{id}', ifMatch(id, etag))),
};

const yarns: RecordRepository<Kinds['yarns']> = {
  list: () =>
    everyPage<Schemas['KeptFabric'], YarnNotes>((cursor) => client.GET('/v1/fabrics', query(cursor)), fromYarnRecord),
  one: async (id) => answer(await client.GET('/v1/fabrics/{id}', at(id)), fromYarnRecord),
  add: async (notes) => answer(await client.POST('/v1/fabrics', { body: TO_RECORD.yarns(notes) }), fromYarnRecord),
  put: async (id, etag, notes) =>
    answer(
      await client.PUT('/v1/fabrics/{id}', { ...ifMatch(id, etag), body: TO_RECORD.yarns(notes) }),
      fromYarnRecord,
    ),
  remove: async (id, etag) => throwIfUnavailable(await client.DELETE('/v1/fabrics/{id}', ifMatch(id, etag))),
};

export const REPOSITORIES: { readonly [K in Kind]: RecordRepository<Kinds[K]> } = { bodies, garments, yarns };
