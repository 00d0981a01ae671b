import { onShelf } from '../notebook/kinds.ts';
import type { YarnNotes } from '../notebook/notebook.ts';
import { withNotes } from '../notebook/shelf.ts';
import { change } from '../notebook/use-notebook.ts';

export const writeYarn = (how: (notes: YarnNotes) => YarnNotes): void =>
  change((notebook) => onShelf(notebook, 'yarns', (shelf) => withNotes(shelf, how)));
