import { DEFAULT_THICKNESS_U, GARMENT_DIMENSIONS, type Garment, type GarmentMeasure, type Layer } from '#garment';
import type { FlatMeasures } from '../drawing/flat-garment.ts';
import type { GarmentNotes, LayerNotes } from '../notebook/notebook.ts';
import { valueIn } from '../reading/read.ts';
import { remembering } from './remembering.ts';

/** An ordinary fabric, where its thickness is not written (mm; assumed: worsted stockinette), and how little that is known. */
const ORDINARY = { thicknessMm: 3, thicknessU: 1 };
/** A thin sweater, where the thickness of what is beneath is not written (assumed). */
const BENEATH = { thicknessMm: 2, u: 1 };

/** The measures that could be read, mm. */
export function flatMeasures(notes: Pick<GarmentNotes, 'measures'>): FlatMeasures {
  return Object.fromEntries(
    GARMENT_DIMENSIONS.flatMap((name) => {
      const value = valueIn(notes.measures[name]);
      return value === null || value === 0 ? [] : [[name, value]];
    }),
  );
}

export function toLayer(layer: LayerNotes | null): Layer | null {
  if (layer === null) return null;
  const thicknessMm = valueIn(layer.thickness, 'small');
  return { sleeves: layer.sleeves, ...(thicknessMm === null ? BENEATH : { thicknessMm, u: DEFAULT_THICKNESS_U }) };
}

/** The garment for the reckoning; null while no width is written. */
export const toGarment = remembering((notes: GarmentNotes): Garment | null => {
  const measures = Object.entries(flatMeasures(notes)).map(([name, value]): GarmentMeasure => ({
    name: name as GarmentMeasure['name'],
    value,
    how: 'home',
    ...(name === 'sleeve-length' ? { from: notes.sleeveFrom } : {}),
  }));
  if (measures.length === 0) return null;
  const thicknessMm = valueIn(notes.thickness, 'small');
  return {
    construction: notes.construction,
    measures,
    ...(thicknessMm === null ? ORDINARY : { thicknessMm, thicknessU: DEFAULT_THICKNESS_U }),
    layer: toLayer(notes.layer),
    wornStretched: notes.wornStretched,
    wears: notes.wears,
  };
});
