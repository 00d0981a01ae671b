import { useSyncExternalStore } from 'react';
import { saveNotebook, loadNotebook, onOtherTabSave } from './notebook-storage.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { withoutChange } from '../notebook/without-change.ts';

let current: Notebook = loadNotebook();
let browserKeeps = true;
let undo: { readonly said: string; readonly back: () => void; readonly place: Element | null } | null = null;
const listeners = new Set<() => void>();

const tell = (): void => listeners.forEach((listener) => listener());
const listen = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};

onOtherTabSave((notebook) => {
  current = notebook;
  tell();
});

export const notebook = (): Notebook => current;

/** Takes in what another window of this browser wrote and has not been heard of yet. */
export function reloadNotebook(): void {
  const kept = loadNotebook();
  if (!browserKeeps || JSON.stringify(kept) === JSON.stringify(current)) return;
  current = kept;
  tell();
}

/** Changes the notebook, and keeps it in this browser at once. */
export function change(how: (notebook: Notebook) => Notebook): void {
  const next = how(current);
  if (next === current) return;
  current = next;
  browserKeeps = saveNotebook(current);
  tell();
}

/** Says what was just taken away, with a button that does `back`. It stays until the next one, or until it is closed; the focus returns then to where it is now. */
export function offerUndo(said: string, back: () => void): void {
  undo = { said, back, place: document.activeElement };
  tell();
}

/** A change that takes something away, or much at once, and its way back: what is written after it stays. */
export function changeWithUndo(said: string, how: (notebook: Notebook) => Notebook): void {
  const before = current;
  change(how);
  const after = current;
  offerUndo(said, () => change((now) => withoutChange(now, before, after)));
}

export function undoLast(): void {
  const taken = undo;
  undo = null;
  taken?.back();
  tell();
}

export function dismissUndo(): void {
  undo = null;
  tell();
}

/** What had the focus when the way back was offered. */
export const undoFocus = (): Element | null => undo?.place ?? null;

export const onNotebookChange = listen;
export const useNotebook = (): Notebook => useSyncExternalStore(listen, notebook);
export const useUndo = (): string | null => useSyncExternalStore(listen, () => undo?.said ?? null);

/** False while this browser keeps nothing. */
export const useBrowserKeeps = (): boolean => useSyncExternalStore(listen, () => browserKeeps);
