import { blankNotebook } from '../notebook/blank.ts';
import { designFromEarlier, garmentsFromEarlier } from '../notebook/from-earlier.ts';
import type { Notebook } from '../notebook/notebook.ts';

/** The key in this browser's storage. Its number is the version of the shape: an older shape is left as it is, not overwritten. */
const STORAGE_KEY = 'easewright-notebook-1';

/** Regions that measure in inches (from memory). */
const INCH_REGIONS = /-(US|LR|MM)$/;
const blank = (): Notebook => blankNotebook(INCH_REGIONS.test(navigator.language) ? 'in' : 'cm');

export function loadNotebook(): Notebook {
  return parse(storedText()) ?? blank();
}

function storedText(): string | null {
  try {
    return localStorage.getItem(STORAGE_KEY);
  } catch {
    return null;
  }
}

/** False where the storage is full or blocked: the notebook stays on the page, and the server still stores it. */
export function saveNotebook(notebook: Notebook): boolean {
  try {
    localStorage.setItem(STORAGE_KEY, JSON.stringify(notebook));
    return true;
  } catch {
    return false;
  }
}

/** Calls back when another tab of this browser saved the notebook. */
export function onNotebookSavedElsewhere(listener: (notebook: Notebook) => void): void {
  window.addEventListener('storage', ({ key, newValue }) => {
    const notebook = key === STORAGE_KEY ? parse(newValue) : null;
    if (notebook) listener(notebook);
  });
}

/** A saved notebook; fields that it does not have yet are blank. Null where there is none or it cannot be read. */
function parse(text: string | null): Notebook | null {
  if (text === null) return null;
  try {
    const found = JSON.parse(text) as Partial<Notebook>;
    const base = blank();
    return {
      ...base,
      ...found,
      garments: garmentsFromEarlier(found.garments ?? base.garments, found.bodies ?? base.bodies),
      design: designFromEarlier({ ...base.design, ...found.design }),
    };
  } catch {
    return null;
  }
}
