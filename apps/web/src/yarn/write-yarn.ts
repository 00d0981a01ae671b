import { updateCollection } from '../notebook/kinds.ts';
import type { YarnNotes } from '../notebook/notebook.ts';
import { withNotes } from '../notebook/collection.ts';
import { change } from '../state/notebook.ts';

export const writeYarn = (how: (notes: YarnNotes) => YarnNotes): void =>
  change((notebook) => updateCollection(notebook, 'yarns', (collection) => withNotes(collection, how)));
