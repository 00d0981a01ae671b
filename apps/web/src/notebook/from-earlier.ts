import { withoutGoneRules } from '#target-sheet';
import { blankDesign, blankGarment } from './blank.ts';
import { openEntry, type Collection } from './collection.ts';
import type { BodyNotes, DesignNotes, GarmentNotes } from './notebook.ts';
import type { Typed } from './typed.ts';

/** A design as it was saved before the ease could be a sweater's. */
interface EarlierDesign {
  readonly easeChange?: Typed;
}

/** A saved design: fields that it does not have yet are blank, and rules that are gone are left out. */
export function designFromEarlier(saved: Partial<DesignNotes> & EarlierDesign): DesignNotes {
  const { easeChange, ...design } = saved;
  const blank = blankDesign(design.ownEase?.tape ?? 'cm');
  return {
    ...blank,
    ...design,
    ...easeFromEarlier(design.basis, easeChange),
    rules: withoutGoneRules(design.rules ?? {}),
  };
}

/** A sweater that a design was based on gave its ease, whatever else was chosen. */
const easeFromEarlier = (
  basis: DesignNotes['basis'] | undefined,
  easeChange: Typed | undefined,
): Partial<DesignNotes> =>
  easeChange !== undefined && basis === 'garment' ? { ease: 'garment', moreThanGarment: easeChange } : {};

/** Saved sweaters: fields that they do not have yet are blank. The open one fits the open body; so do all where there is no other body. */
export const garmentsFromEarlier = (
  saved: Collection<GarmentNotes>,
  bodies: Collection<BodyNotes>,
): Collection<GarmentNotes> => ({
  ...saved,
  entries: saved.entries.map((entry) => ({
    ...entry,
    notes: garmentFromEarlier({
      wearer: entry.key === saved.open || bodies.entries.length === 1 ? openEntry(bodies).key : null,
      ...(entry.notes as EarlierGarment),
    }),
    conflict: entry.conflict && {
      ...entry.conflict,
      notes: entry.conflict.notes && garmentFromEarlier(entry.conflict.notes),
    },
  })),
});

type EarlierGarment = Omit<GarmentNotes, 'wearer'> & Partial<GarmentNotes>;

const garmentFromEarlier = (notes: EarlierGarment): GarmentNotes => ({ ...blankGarment('cm'), ...notes });
