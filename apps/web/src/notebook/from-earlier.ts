import { withoutGoneRules } from '#target-sheet';
import { blankDesign, blankGarment } from './blank.ts';
import type { Collection } from './collection.ts';
import type { BodyNotes, DesignNotes, GarmentNotes } from './notebook.ts';
import type { Typed } from './typed.ts';

/** A design as it was saved while a garment was a basis that had to be chosen, and its change of ease a field of its own. */
type EarlierDesign = DesignNotes & { readonly easeChange?: Typed };

/** A saved design: fields that it does not have yet are blank, and rules that are gone are left out. */
export function designFromEarlier({ easeChange, ...saved }: EarlierDesign): DesignNotes {
  const ofGarment = easeChange !== undefined && saved.basis !== 'body';
  return {
    ...blankDesign(saved.ownEase.tape),
    ...saved,
    ...(ofGarment && { ease: 'garment', change: easeChange }),
    rules: withoutGoneRules(saved.rules),
  };
}

/** Saved garments: fields that they do not have yet are blank. The open one fits the open body, as the sheet was of both. */
export const garmentsFromEarlier = (
  saved: Collection<GarmentNotes>,
  bodies: Collection<BodyNotes>,
): Collection<GarmentNotes> => ({
  ...saved,
  entries: saved.entries.map((entry) => ({
    ...entry,
    notes: {
      ...filled(entry.notes),
      ...(isEarlier(entry.notes) && entry.key === saved.open && { wearer: bodies.open }),
    },
    conflict: entry.conflict && { ...entry.conflict, notes: entry.conflict.notes && filled(entry.conflict.notes) },
  })),
});

const filled = (notes: GarmentNotes): GarmentNotes => ({ ...blankGarment(notes.thickness.tape), ...notes });
const isEarlier = (notes: GarmentNotes): boolean => !('wearer' in notes);
