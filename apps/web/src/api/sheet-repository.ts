import type { TargetSheet } from '#target-sheet';
import { inUnit } from '#target-sheet';
import type { GarmentNotes, Notebook } from '../notebook/notebook.ts';
import { openEntry, type Entry } from '../notebook/collection.ts';
import { garmentsOfBody } from '../notebook/garments-of-body.ts';
import { toBody } from '../compute/to-body.ts';
import { toGarment } from '../compute/to-garment.ts';
import { isChanged } from '../records/record-text.ts';
import { client } from './client.ts';
import { toDesignRecord, toMadeRecord } from '../reading/design-record.ts';
import type { Answer } from './record-repositories.ts';

/** A kept sheet as the API lists it. */
interface ListedSheet {
  readonly id: string;
  readonly title: string;
  readonly createdAt: string;
  readonly inputsChanged: readonly string[];
}

const reached = (response: Response): void => {
  if (response.status >= 500) throw new Error(`The store answered ${response.status}.`);
};

export async function listSheets(): Promise<readonly ListedSheet[]> {
  const all: ListedSheet[] = [];
  let cursor: string | null | undefined;
  do {
    const query: { limit: number; cursor?: string } = { limit: 100, ...(cursor ? { cursor } : {}) };
    const { data, response } = await client.GET('/v1/target-sheets', { params: { query } });
    reached(response);
    if (data === undefined) throw new Error('The store gave no list.');
    all.push(...data.items);
    cursor = data.next;
  } while (cursor);
  return all;
}

export async function getSheet(id: string): Promise<TargetSheet | null> {
  const { data, response } = await client.GET('/v1/target-sheets/{id}', { params: { path: { id } } });
  reached(response);
  return data === undefined ? null : inUnit(data as unknown as TargetSheet, 'mm');
}

export async function deleteSheet(id: string): Promise<void> {
  const { response } = await client.DELETE('/v1/target-sheets/{id}', { params: { path: { id } } });
  reached(response);
}

/** True where every input of the sheet is stored in its current version. */
export function canStoreSheet(notebook: Notebook): boolean {
  const body = openEntry(notebook.bodies);
  const yarn = openEntry(notebook.yarns);
  return (
    !isChanged('yarns', yarn) &&
    (!hasBody(notebook) || !isChanged('bodies', body)) &&
    worn(notebook).every((garment) => !isChanged('garments', garment))
  );
}

const hasBody = (notebook: Notebook): boolean => {
  const { body } = toBody(openEntry(notebook.bodies).notes);
  return body.measures.length > 0 || body.ageYears !== null;
};

/** The garments that a sheet is made from. */
const worn = ({ garments, bodies }: Notebook): readonly Entry<GarmentNotes>[] =>
  garmentsOfBody(garments, bodies).filter(({ notes }) => toGarment(notes) !== null);

export async function storeSheet(notebook: Notebook, title: string): Promise<Answer<TargetSheet>> {
  const { data, error, response } = await client.POST('/v1/target-sheets', {
    body: {
      title,
      unit: notebook.tape,
      design: toDesignRecord(notebook.design),
      rules: notebook.design.rules,
      made: toMadeRecord(notebook.made),
      fabricId: openEntry(notebook.yarns).stored?.id ?? '',
      bodyId: hasBody(notebook) ? (openEntry(notebook.bodies).stored?.id ?? null) : null,
      garments: worn(notebook).flatMap(({ key, stored }) =>
        stored === null ? [] : [{ id: stored.id, basis: key === notebook.garments.open }],
      ),
    },
  });
  reached(response);
  if (data !== undefined) return { is: 'kept', kept: data as unknown as TargetSheet };
  return {
    is: 'not',
    status: response.status,
    why: error.errors?.map(({ detail }) => detail).join(' ') ?? error.detail,
  };
}
