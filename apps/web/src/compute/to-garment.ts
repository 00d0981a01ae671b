import { GARMENT_DIMENSIONS, garmentFromRecord, type Garment } from '#garment';
import type { SheetInput } from '#target-sheet';
import type { FlatMeasures } from './flat-measures.ts';
import type { Collection } from '../notebook/collection.ts';
import { garmentsOfBody } from '../notebook/garments-of-body.ts';
import type { BodyNotes, GarmentNotes } from '../notebook/notebook.ts';
import { lengthOf } from '../reading/believed-garment.ts';
import { toGarmentRecord } from '../reading/garment-record.ts';
import { memoizeLast } from './memoize-last.ts';

export { isNoThickness, lengthOf } from '../reading/believed-garment.ts';

/** The measures that could be read and believed, mm. */
export function flatMeasures({ measures }: Pick<GarmentNotes, 'measures'>): FlatMeasures {
  return Object.fromEntries(
    GARMENT_DIMENSIONS.flatMap((name) => {
      const value = lengthOf(name, measures[name]);
      return value === null ? [] : [[name, value]];
    }),
  );
}

const KNOWN = new WeakMap<GarmentNotes, Garment | null>();

/** The garment for the computation; null while no width is written. Notes never change, so each is read once. */
export function toGarment(notes: GarmentNotes): Garment | null {
  const known = KNOWN.get(notes);
  if (known !== undefined) return known;
  const record = toGarmentRecord(notes);
  const garment = record.measures.length === 0 ? null : garmentFromRecord(record);
  KNOWN.set(notes, garment);
  return garment;
}

/** The garments that fit the body that is open; the one that is open itself is the basis. */
export const toGarments = memoizeLast(
  (garments: Collection<GarmentNotes>, bodies: Collection<BodyNotes>): SheetInput['garments'] =>
    garmentsOfBody(garments, bodies).flatMap(({ key, notes }) => {
      const garment = toGarment(notes);
      return garment === null ? [] : [{ ...garment, basis: key === garments.open }];
    }),
);
