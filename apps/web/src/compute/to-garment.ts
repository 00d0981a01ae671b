import {
  DEFAULT_THICKNESS_U,
  GARMENT_DIMENSIONS,
  garmentProblems,
  type Garment,
  type GarmentDimension,
  type GarmentMeasure,
  type Layer,
} from '#garment';
import type { FlatMeasures } from './flat-measures.ts';
import type { GarmentNotes, LayerNotes } from '../notebook/notebook.ts';
import type { Typed } from '../notebook/typed.ts';
import { valueIn } from '../reading/read.ts';
import { memoizeLast } from './memoize-last.ts';

/** An ordinary fabric, where its thickness is not written (mm; assumed: worsted stockinette), and how little that is known. */
const ORDINARY = { thicknessMm: 3, thicknessU: 1 };
/** A thin sweater, where the thickness of what is beneath is not written (assumed). */
const BENEATH = { thicknessMm: 2, u: 1 };

/** What the store takes of a length of a garment, mm. */
const STORED = [1, 3000] as const;

const PLAIN: Garment = {
  construction: 'drop-shoulder',
  measures: [],
  ...ORDINARY,
  layer: null,
  wornStretched: false,
  wears: {},
};
/** Whether a garment may be so. */
const believed = (part: Partial<Garment>): boolean => garmentProblems({ ...PLAIN, ...part }).length === 0;

/** A length of a garment that could be read and believed, mm. */
export function lengthOf(name: GarmentDimension, typed: Typed | undefined): number | null {
  const value = valueIn(typed);
  if (value === null || value < STORED[0] || value > STORED[1]) return null;
  return believed({ measures: [{ name, value, how: 'home' }] }) ? value : null;
}

/** A thickness of a fabric that could be read and believed, mm. */
export function thicknessOf(typed: Typed): number | null {
  const thicknessMm = valueIn(typed, 'small');
  return thicknessMm !== null && believed({ thicknessMm }) ? thicknessMm : null;
}

/** True where a thickness can be read and is left out all the same. */
export const isNoThickness = (typed: Typed): boolean => valueIn(typed, 'small') !== null && thicknessOf(typed) === null;

/** The measures that could be read and believed, mm. */
export function flatMeasures({ measures }: Pick<GarmentNotes, 'measures'>): FlatMeasures {
  return Object.fromEntries(
    GARMENT_DIMENSIONS.flatMap((name) => {
      const value = lengthOf(name, measures[name]);
      return value === null ? [] : [[name, value]];
    }),
  );
}

export function toLayer(layer: LayerNotes | null): Layer | null {
  if (layer === null) return null;
  const thicknessMm = thicknessOf(layer.thickness);
  return { sleeves: layer.sleeves, ...(thicknessMm === null ? BENEATH : { thicknessMm, u: DEFAULT_THICKNESS_U }) };
}

/** The garment for the reckoning; null while no width is written. */
export const toGarment = memoizeLast((notes: GarmentNotes): Garment | null => {
  const measures = Object.entries(flatMeasures(notes)).map(([name, value]): GarmentMeasure => ({
    name: name as GarmentMeasure['name'],
    value,
    how: 'home',
    ...(name === 'sleeve-length' ? { from: notes.sleeveFrom } : {}),
  }));
  if (measures.length === 0) return null;
  const thicknessMm = thicknessOf(notes.thickness);
  return {
    construction: notes.construction,
    measures,
    ...(thicknessMm === null ? ORDINARY : { thicknessMm, thicknessU: DEFAULT_THICKNESS_U }),
    layer: toLayer(notes.layer),
    wornStretched: notes.wornStretched,
    wears: notes.wears,
  };
});
