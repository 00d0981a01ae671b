import { fromEarlier, type TargetSheet } from '#target-sheet';
import type { KeptSheet, KeptSheets } from '../notebook/kept-sheet.ts';
import { designFromEarlier } from '../notebook/from-earlier.ts';

/** The key in this browser's storage; apart from the notebook, which is saved at every key press. */
const STORAGE_KEY = 'easewright-sheets-1';

export function loadKeptSheets(): KeptSheets {
  const none: KeptSheets = { sheets: [], removed: [] };
  try {
    const found = JSON.parse(localStorage.getItem(STORAGE_KEY) ?? '{}') as Partial<KeptSheets>;
    return { ...none, ...found, sheets: (found.sheets ?? []).map(inShapeOfNow) };
  } catch {
    return none;
  }
}

const inShapeOfNow = (kept: KeptSheet): KeptSheet => ({
  ...kept,
  sheet: fromEarlier(kept.sheet) as TargetSheet | null,
  chosen: kept.chosen && { ...kept.chosen, design: designFromEarlier(kept.chosen.design) },
});

export function saveKeptSheets(kept: KeptSheets): void {
  try {
    localStorage.setItem(STORAGE_KEY, JSON.stringify(kept));
  } catch {
    // The storage is full: the sheets stay on the page, and the server still stores them.
  }
}

/** Calls back when another tab of this browser saved kept sheets. */
export function onKeptSheetsSavedElsewhere(listener: () => void): void {
  window.addEventListener('storage', ({ key }) => {
    if (key === STORAGE_KEY) listener();
  });
}
