import { KINDS, collectionOf, type Kind } from './kinds.ts';
import type { Notebook } from './notebook.ts';

const DEMO = 'example-';

/** The key of an entry of the example, always the same, so that it can be recognised. */
export const exampleKey = (kind: Kind, i: number): string => `${DEMO}${kind}-${i + 1}`;

/** True while the notebook has any entry of the example, changed or not. */
export const hasExample = (notebook: Notebook): boolean =>
  KINDS.some((kind) => collectionOf(notebook, kind).entries.some(({ key }) => key.startsWith(DEMO)));
