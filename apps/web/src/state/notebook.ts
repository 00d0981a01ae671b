import type { Notebook } from '../notebook/notebook.ts';
import { loadNotebook, onNotebookSavedElsewhere, saveNotebook } from './notebook-storage.ts';
import { pageStore } from './page-store.ts';

onNotebookSavedElsewhere((notebook) => pageStore.setState({ notebook }));

export const currentNotebook = (): Notebook => pageStore.getState().notebook;

/** Takes over what another tab of this browser saved, where its event has not arrived yet. */
export function reloadNotebook(): void {
  const { notebook, browserSaves } = pageStore.getState();
  const saved = loadNotebook();
  if (browserSaves && JSON.stringify(saved) !== JSON.stringify(notebook)) pageStore.setState({ notebook: saved });
}

/** Changes the notebook and saves it in this browser at once. */
export function updateNotebook(change: (notebook: Notebook) => Notebook): void {
  const before = currentNotebook();
  const notebook = change(before);
  if (notebook !== before) pageStore.setState({ notebook, browserSaves: saveNotebook(notebook) });
}
