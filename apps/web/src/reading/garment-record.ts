import {
  GARMENT_DIMENSIONS,
  GARMENT_RECORD,
  type GarmentDimension,
  type GarmentRecord,
  type LayerRecord,
  type StoredGarment,
} from '#garment';
import { storedRecord, type Measured } from '#measure';
import type { GarmentNotes, LayerNotes } from '../notebook/notebook.ts';
import type { Typed } from '../notebook/typed.ts';
import { lengthOf, thicknessOf } from './believed-garment.ts';
import { carrying, type Carry } from './carrying.ts';
import { fromMeasured, toSize } from './measured.ts';

type MeasureRecord = GarmentRecord['measures'][number];

/** A thickness that was not written: an ordinary fabric (assumed: worsted stockinette) and a thin sweater, hardly known. */
const GUESSED = { value: 3, unit: 'mm', u: 1 } as const;
const GUESSED_LAYER = { value: 2, unit: 'mm', u: 1 } as const;

export function toLayerRecord<N extends { readonly layer: LayerNotes | null }, R extends { layer: LayerRecord | null }>(
  notes: N,
  carry: Carry<N, R>,
): LayerRecord | null {
  const { layer } = notes;
  if (layer === null) return null;
  const thickness = carry<LayerRecord['thickness'] | null>(
    (it) => it.layer?.thickness,
    (record) => record.layer?.thickness ?? null,
    () => writtenThickness(layer.thickness),
  );
  return { sleeves: layer.sleeves, thickness: thickness ?? GUESSED_LAYER };
}

export const fromLayerRecord = (layer: LayerRecord | null): LayerNotes | null =>
  layer === null ? null : { sleeves: layer.sleeves, thickness: fromThickness(layer.thickness, GUESSED_LAYER) };

/** The API's ids; a key of this page is none. */
const UUID = /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/i;

export function toGarmentRecord(notes: GarmentNotes): GarmentRecord {
  const carry = carrying<GarmentNotes, StoredGarment>(notes, fromGarmentRecord);
  const measureOf = (name: GarmentDimension): MeasureRecord | null => {
    const measure = carry<MeasureRecord | null>(
      ({ measures }) => measures[name],
      ({ measures }) => measures.find((it) => it.name === name) ?? null,
      () => writtenMeasure(name, notes.measures[name]),
    );
    if (measure === null) return null;
    return {
      ...measure,
      confirmed: isConfirmed(notes, name),
      ...(name === 'sleeve-length' && { from: notes.sleeveFrom }),
    };
  };
  return {
    ...notes.record,
    title: carry(({ name }) => name, ({ title }) => title, () => notes.name.trim().slice(0, GARMENT_RECORD.title.max)),
    construction: notes.construction,
    measures: inOrder(notes.record).flatMap((name) => measureOf(name) ?? []),
    thickness: carry<GarmentRecord['thickness']>(
      ({ thickness }) => thickness,
      ({ thickness }) => thickness,
      () => writtenThickness(notes.thickness) ?? GUESSED,
    ),
    layer: toLayerRecord(notes, carry),
    wornStretched: notes.wornStretched,
    fits: notes.fits,
    neckline: notes.neckline,
    sleeve: notes.sleeve,
    wears: notes.wears,
    madeFrom: notes.madeFrom !== null && UUID.test(notes.madeFrom) ? notes.madeFrom : null,
  }; // prettier-ignore
}

/** The dimensions in the order of the record; those that it lacks follow. */
const inOrder = (record: StoredGarment | undefined): readonly GarmentDimension[] => [
  ...new Set([...(record?.measures.map(({ name }) => name) ?? []), ...GARMENT_DIMENSIONS]),
];

/** Whether she said that a measure is right as it is written. */
export const isConfirmed = ({ measures, confirmed }: GarmentNotes, name: GarmentDimension): boolean =>
  confirmed[name] !== undefined && confirmed[name] === measures[name]?.text;

function writtenMeasure(name: GarmentDimension, typed: Typed | undefined): MeasureRecord | null {
  const size = lengthOf(name, typed) === null ? null : toSize(typed, 'length');
  return size === null ? null : { name, ...size };
}

const writtenThickness = (typed: Typed) => (thicknessOf(typed) === null ? null : toSize(typed, 'small'));

/** Nothing is shown of a thickness that the page had guessed. */
function fromThickness(thickness: Measured, guessed: typeof GUESSED | typeof GUESSED_LAYER): Typed {
  const { value, unit, u, text } = thickness;
  const isGuess = text == null && value === guessed.value && unit === guessed.unit && u === guessed.u;
  return fromMeasured(isGuess ? null : thickness, 'small');
}

export function fromGarmentRecord(given: GarmentRecord): GarmentNotes {
  const record = storedRecord(GARMENT_RECORD, given);
  const measures = record.measures.map((measure): [GarmentDimension, Typed] => [
    measure.name,
    fromMeasured(measure, 'length'),
  ]);
  return {
    name: record.title,
    construction: record.construction,
    measures: Object.fromEntries(measures),
    sleeveFrom: record.measures.find(({ name }) => name === 'sleeve-length')?.from ?? 'seam',
    thickness: fromThickness(record.thickness, GUESSED),
    layer: fromLayerRecord(record.layer),
    wornStretched: record.wornStretched,
    fits: record.fits,
    neckline: record.neckline,
    sleeve: record.sleeve,
    wears: record.wears as GarmentNotes['wears'],
    wearer: null,
    madeFrom: record.madeFrom,
    confirmed: Object.fromEntries(
      record.measures.flatMap((measure) =>
        measure.confirmed ? [[measure.name, fromMeasured(measure, 'length').text]] : [],
      ),
    ),
    record,
  };
}
