import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { KeptSheets } from '../notebook/kept-sheet.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { loadKeptSheets } from './kept-sheets-storage.ts';
import { leafOf, type LeafName } from './leaves.ts';
import { loadNotebook } from './notebook-storage.ts';

/** An offer to undo the last change. */
interface UndoOffer {
  readonly message: string;
  readonly undo: () => void;
  /** What had the focus when the offer was made. */
  readonly focus: Element | null;
}

/** Everything that the parts of the page share. */
interface PageState {
  readonly notebook: Notebook;
  /** False while this browser has no room to save the notebook. */
  readonly browserSaves: boolean;
  readonly keptSheets: KeptSheets;
  readonly undo: UndoOffer | null;
  /** Whether the server answered the last request; `unasked` until the first. */
  readonly serverReach: 'unasked' | 'reached' | 'lost';
  readonly openLeaf: LeafName;
  readonly printing: boolean;
}

export const pageStore = createStore<PageState>(() => ({
  notebook: loadNotebook(),
  browserSaves: true,
  keptSheets: loadKeptSheets(),
  undo: null,
  serverReach: 'unasked',
  openLeaf: leafOf(location.hash),
  printing: false,
}));

/** A value from the store; the component renders again when that value changes. */
export const usePage = <T>(select: (state: PageState) => T): T => useStore(pageStore, select);
