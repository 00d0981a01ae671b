import { isBlank, KINDS, collectionOf } from './kinds.ts';
import type { Notebook } from './notebook.ts';

/** True while nothing is entered in the notebook. */
export const isEmpty = (notebook: Notebook): boolean =>
  KINDS.every((kind) => collectionOf(notebook, kind).entries.every((entry) => isBlank(kind, entry.notes)));
