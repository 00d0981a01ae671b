import type { GarmentDimension } from '#garment';
import { updateCollection } from '../notebook/kinds.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import { withNotes } from '../notebook/collection.ts';
import type { Typed } from '../notebook/typed.ts';
import { updateNotebook } from '../state/notebook.ts';

export const writeGarment = (how: (notes: GarmentNotes) => GarmentNotes): void =>
  updateNotebook((notebook) => updateCollection(notebook, 'garments', (collection) => withNotes(collection, how)));

export const writeFlat = (measures: Readonly<Partial<Record<GarmentDimension, Typed>>>): void =>
  writeGarment((it) => ({ ...it, measures: { ...it.measures, ...measures } }));

/** Confirms a questioned value. */
export const confirmFlat = (name: GarmentDimension): void =>
  writeGarment((it) => ({ ...it, confirmed: { ...it.confirmed, [name]: it.measures[name]?.text } }));

/** Takes that back: it is questioned again where it looks wrong. */
export const doubtFlat = (name: GarmentDimension): void =>
  writeGarment((it) => {
    const { [name]: _, ...rest } = it.confirmed;
    return { ...it, confirmed: rest };
  });
