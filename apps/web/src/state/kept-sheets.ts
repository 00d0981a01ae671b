import type { KeptSheets } from '../notebook/kept-sheet.ts';
import { loadKeptSheets, onKeptSheetsSavedElsewhere, saveKeptSheets } from './kept-sheets-storage.ts';
import { pageStore } from './page-store.ts';

onKeptSheetsSavedElsewhere(() => pageStore.setState({ keptSheets: loadKeptSheets() }));

export const currentKeptSheets = (): KeptSheets => pageStore.getState().keptSheets;

/** Changes the kept sheets and saves them in this browser at once. */
export function updateKeptSheets(change: (kept: KeptSheets) => KeptSheets): void {
  const keptSheets = change(currentKeptSheets());
  if (keptSheets === currentKeptSheets()) return;
  saveKeptSheets(keptSheets);
  pageStore.setState({ keptSheets });
}
