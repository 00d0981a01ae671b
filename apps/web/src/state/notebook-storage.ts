import { blankNotebook } from '../notebook/blank.ts';
import type { Notebook } from '../notebook/notebook.ts';

/** Where the notebook lies in this browser. The number is the shape's: one that cannot be read any more is left alone, not overwritten. */
const PLACE = 'easewright-notebook-1';

/** Places that measure in inches (from memory). */
const INCHES = /-(US|LR|MM)$/;
const homeTape = (): 'in' | 'cm' => (INCHES.test(navigator.language) ? 'in' : 'cm');

export function loadNotebook(): Notebook {
  const blank = blankNotebook(homeTape());
  return parsed(stored(), blank) ?? blank;
}

function stored(): string | null {
  try {
    return localStorage.getItem(PLACE);
  } catch {
    return null;
  }
}

/** False where the browser's space is full or closed: what is on the page stays there, and the store still takes it. */
export function saveNotebook(notebook: Notebook): boolean {
  try {
    localStorage.setItem(PLACE, JSON.stringify(notebook));
    return true;
  } catch {
    return false;
  }
}

/** Another window of this browser wrote in the same notebook. */
export function onOtherTabSave(take: (notebook: Notebook) => void): void {
  window.addEventListener('storage', ({ key, newValue }) => {
    const notebook = key === PLACE ? parsed(newValue, blankNotebook(homeTape())) : null;
    if (notebook) take(notebook);
  });
}

function parsed(text: string | null, blank: Notebook): Notebook | null {
  if (text === null) return null;
  try {
    const found = JSON.parse(text) as Partial<Notebook>;
    return { ...blank, ...found, design: { ...blank.design, ...found.design } };
  } catch {
    return null;
  }
}
