import { GARMENT_DIMENSIONS, garmentFromRecord, type Garment } from '#garment';
import type { FlatMeasures } from './flat-measures.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import { lengthOf } from '../reading/believed-garment.ts';
import { toGarmentRecord } from '../reading/garment-record.ts';
import { memoizeEach } from './memoize-each.ts';

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

/** The garment for the computation; null while no width is written. */
export const toGarment = memoizeEach((notes: GarmentNotes): Garment | null => {
  const record = toGarmentRecord(notes);
  return record.measures.length === 0 ? null : garmentFromRecord(record);
});
