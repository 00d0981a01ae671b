import { inUnit } from '#target-sheet';
import type { KeptSheet } from '../notebook/kept-sheet.ts';
import { updateKeptSheets, currentKeptSheets } from '../state/kept-sheets.ts';
import { newKey } from '../notebook/new-key.ts';
import { currentNotebook } from '../state/notebook.ts';
import { sheetFingerprint } from '../records/sheet-fingerprint.ts';
import { canStoreSheet, deleteSheet, storeSheet, listSheets } from '../api/sheet-repository.ts';

const onSheet = (key: string, how: (sheet: KeptSheet) => KeptSheet): void =>
  updateKeptSheets((kept) => ({
    ...kept,
    sheets: kept.sheets.map((sheet) => (sheet.key === key ? how(sheet) : sheet)),
  }));

/** True for a waiting sheet that can be sent now: its inputs are still those of the notebook, and are stored. */
const canGo = ({ waiting }: KeptSheet): boolean =>
  waiting !== null && canStoreSheet(currentNotebook()) && waiting === sheetFingerprint(currentNotebook());

export const hasPendingSheets = (): boolean =>
  currentKeptSheets().removed.length > 0 || currentKeptSheets().sheets.some(canGo);

export const anyStored = (): boolean => currentKeptSheets().sheets.some(({ stored }) => stored !== null);

/** Sends the removed and the kept sheets. Throws when the server cannot be reached. */
export async function storeSheets(): Promise<void> {
  for (const id of currentKeptSheets().removed) {
    await deleteSheet(id);
    updateKeptSheets((kept) => ({ ...kept, removed: kept.removed.filter((gone) => gone !== id) }));
  }
  for (const sheet of currentKeptSheets().sheets.filter(canGo)) {
    const result = await storeSheet(currentNotebook(), sheet.title);
    if (result.is === 'kept') {
      const { kept } = result;
      onSheet(sheet.key, (it) => ({
        ...it,
        sheet: inUnit(kept, 'mm'),
        createdAt: kept.createdAt,
        stored: kept.id,
        waiting: null,
      }));
    } else onSheet(sheet.key, (it) => ({ ...it, waiting: null }));
  }
}

/** Fetches the list of stored sheets. A sheet that was deleted there stays in this browser. */
export async function fetchSheets(): Promise<void> {
  const listed = await listSheets();
  updateKeptSheets((kept) => {
    const byId = new Map(listed.map((entry) => [entry.id, entry]));
    const sheets = kept.sheets.flatMap((sheet): KeptSheet[] => {
      if (sheet.stored === null) return [sheet];
      const entry = byId.get(sheet.stored);
      if (entry !== undefined) return [{ ...sheet, changed: entry.inputsChanged }];
      return sheet.sheet === null ? [] : [{ ...sheet, stored: null, changed: [] }];
    });
    const known = new Set([...kept.sheets.map(({ stored }) => stored), ...kept.removed]);
    const arrived = listed
      .filter(({ id }) => !known.has(id))
      .map(({ id, title, createdAt, inputsChanged }): KeptSheet => ({
        key: newKey(), title, createdAt, sheet: null, chosen: null, stored: id, waiting: null, changed: inputsChanged,
      })); // prettier-ignore
    const next = { ...kept, sheets: [...sheets, ...arrived] };
    return JSON.stringify(next) === JSON.stringify(kept) ? kept : next;
  });
}
