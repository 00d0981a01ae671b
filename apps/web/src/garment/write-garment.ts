import type { GarmentDimension } from '#garment';
import type { GrowthInDirection, GrowthLearned } from '#target-sheet';
import { say } from '../messages.ts';
import { updateCollection } from '../notebook/kinds.ts';
import type { GarmentNotes, Pair } from '../notebook/notebook.ts';
import { withNotes } from '../notebook/collection.ts';
import type { Typed } from '../notebook/typed.ts';
import { updateNotebook } from '../state/notebook.ts';
import { changeWithUndo } from '../state/undo.ts';

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

/** A length of ten, before and after. */
const asPair = ({ growth }: GrowthInDirection): Pair => ({
  before: { text: '10', tape: 'cm' },
  after: { text: String(Number((10 * (1 + growth)).toFixed(2))), tape: 'cm' },
});

/** Takes what was learned of the growth into the yarn that is open, as a swatch would tell it; it can be undone. */
export const takeGrowth = ({ across, along }: GrowthLearned): void =>
  changeWithUndo(say.garment.madeFrom.taken, (notebook) =>
    updateCollection(notebook, 'yarns', (collection) =>
      withNotes(collection, (it) => ({
        ...it,
        ...(across && { washedAcross: asPair(across) }),
        ...(along && { washedAlong: asPair(along) }),
      })),
    ),
  );
