import { useSyncExternalStore } from 'react';
import type { KeptSheets } from '../notebook/kept-sheet.ts';

/** Where kept sheets lie in this browser; apart from the notebook, which is written at every key. */
const PLACE = 'easewright-sheets-1';

const listeners = new Set<() => void>();
let current: KeptSheets = readHere();

function readHere(): KeptSheets {
  try {
    return { sheets: [], removed: [], ...(JSON.parse(localStorage.getItem(PLACE) ?? '{}') as Partial<KeptSheets>) };
  } catch {
    return { sheets: [], removed: [] };
  }
}

const tell = (): void => listeners.forEach((listener) => listener());

window.addEventListener('storage', ({ key }) => {
  if (key !== PLACE) return;
  current = readHere();
  tell();
});

export const keptSheets = (): KeptSheets => current;

export function updateKeptSheets(how: (kept: KeptSheets) => KeptSheets): void {
  const next = how(current);
  if (next === current) return;
  current = next;
  try {
    localStorage.setItem(PLACE, JSON.stringify(current));
  } catch {
    // No space: they stay on the page, and at the store once they are there.
  }
  tell();
}

export const onKeptSheetsChange = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

export const useKeptSheets = (): KeptSheets => useSyncExternalStore(onKeptSheetsChange, keptSheets);
