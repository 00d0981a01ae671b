import type { Notebook } from '../notebook/notebook.ts';
import { withoutChange } from '../notebook/without-change.ts';
import { currentNotebook, updateNotebook } from './notebook.ts';
import { pageStore } from './page-store.ts';

/** Says what was just removed or changed, and offers to undo it. The offer stays until the next one or until it is dismissed. */
export function offerUndo(message: string, undo: () => void): void {
  pageStore.setState({ undo: { message, undo, focus: document.activeElement } });
}

/** Removes something or changes much at once, and offers to undo that; what is entered afterwards stays. */
export function changeWithUndo(message: string, change: (notebook: Notebook) => Notebook): void {
  const before = currentNotebook();
  updateNotebook(change);
  const after = currentNotebook();
  offerUndo(message, () => updateNotebook((now) => withoutChange(now, before, after)));
}

export function undoLastChange(): void {
  const offer = pageStore.getState().undo;
  dismissUndo();
  offer?.undo();
}

export const dismissUndo = (): void => pageStore.setState({ undo: null });
