import type { DesignNotes } from '../notebook/notebook.ts';
import { change } from '../state/notebook.ts';

export const writeDesign = (how: (notes: DesignNotes) => DesignNotes): void =>
  change((notebook) => ({ ...notebook, design: how(notebook.design) }));
