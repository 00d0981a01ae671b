import { updateCollection } from '../notebook/kinds.ts';
import type { YarnNotes } from '../notebook/notebook.ts';
import { withNotes } from '../notebook/collection.ts';
import { updateNotebook } from '../state/notebook.ts';

export const writeYarn = (how: (notes: YarnNotes) => YarnNotes): void =>
  updateNotebook((notebook) => updateCollection(notebook, 'yarns', (collection) => withNotes(collection, how)));
