import { In, type EntityManager } from 'typeorm';
import { RULES_VERSION } from '#fit';
import { BODY, FABRIC, GARMENT } from '../records/record.entity.ts';
import type { SheetEntry } from './target-sheet.repository.ts';

const INPUTS = ['body', 'garment', 'fabric'] as const;
export type InputName = (typeof INPUTS)[number];
/** What a sheet rests on. */
export const CHANGEABLE = [...INPUTS, 'rules'] as const;
export type Changeable = (typeof CHANGEABLE)[number];

const ENTITY = { body: BODY, garment: GARMENT, fabric: FABRIC };

/** A kept record that a sheet was made from, and the version it was at. */
interface InputVersion {
  readonly id: string;
  readonly version: number | null;
}

/** The kept records of a kind that a sheet was made from. */
export function inputVersions(sheet: SheetEntry, input: InputName): readonly InputVersion[] {
  if (input === 'garment') return sheet.garments;
  const id = sheet[`${input}Id`];
  return id === null ? [] : [{ id, version: sheet[`${input}Version`] }];
}

/** The versions that kept inputs are at now, by id. What was erased is not there. */
export type CurrentVersions = ReadonlyMap<string, number>;

/** Reads them for all the sheets given, with one query a kind. */
export async function currentVersions(
  manager: EntityManager,
  makerId: string,
  sheets: readonly SheetEntry[],
): Promise<CurrentVersions> {
  const versions = new Map<string, number>();
  for (const input of INPUTS) {
    const ids = sheets.flatMap((sheet) => inputVersions(sheet, input).map(({ id }) => id));
    if (ids.length === 0) continue;
    const rows = await manager.find(ENTITY[input], { select: ['id', 'version'], where: { makerId, id: In(ids) } });
    for (const { id, version } of rows) versions.set(id, version);
  }
  return versions;
}

/** Which of what a sheet was made from is another now, or gone. */
export function inputsChanged(sheet: SheetEntry, current: CurrentVersions): readonly Changeable[] {
  const changed: Changeable[] = INPUTS.filter((input) =>
    inputVersions(sheet, input).some(({ id, version }) => current.get(id) !== version),
  );
  return sheet.rulesVersion === RULES_VERSION ? changed : [...changed, 'rules'];
}
