import { In, type EntityManager } from 'typeorm';
import { RULES_VERSION } from '#fit';
import { BODY, FABRIC, GARMENT } from '../records/record.entity.ts';
import type { SheetEntry } from './target-sheet.repository.ts';

export const INPUTS = ['body', 'garment', 'fabric'] as const;
export type InputName = (typeof INPUTS)[number];
/** What a sheet rests on. */
export const CHANGEABLE = [...INPUTS, 'rules'] as const;
export type Changeable = (typeof CHANGEABLE)[number];

const ENTITY = { body: BODY, garment: GARMENT, fabric: FABRIC };

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
    const ids = sheets.map((sheet) => sheet[`${input}Id`]).filter((id) => id !== null);
    if (ids.length === 0) continue;
    const rows = await manager.find(ENTITY[input], { select: ['id', 'version'], where: { makerId, id: In(ids) } });
    for (const { id, version } of rows) versions.set(id, version);
  }
  return versions;
}

/** Which of what a sheet was made from is another now, or gone. */
export function inputsChanged(sheet: SheetEntry, current: CurrentVersions): readonly Changeable[] {
  const changed: Changeable[] = INPUTS.filter((input) => {
    const id = sheet[`${input}Id`];
    return id !== null && current.get(id) !== sheet[`${input}Version`];
  });
  return sheet.rulesVersion === RULES_VERSION ? changed : [...changed, 'rules'];
}
