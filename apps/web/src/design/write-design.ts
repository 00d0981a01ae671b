import type { DesignNotes } from '../notebook/notebook.ts';
import { updateNotebook } from '../state/notebook.ts';

export const writeDesign = (how: (notes: DesignNotes) => DesignNotes): void =>
  updateNotebook((notebook) => ({ ...notebook, design: how(notebook.design) }));
