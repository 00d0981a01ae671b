import { GARMENT_DIMENSIONS, type GarmentDimension } from '#garment';
import type { components } from '../api.generated.ts';
import type { GarmentNotes, LayerNotes } from '../notebook/notebook.ts';
import type { Typed } from '../notebook/typed.ts';
import { lengthOf, thicknessOf } from '../compute/to-garment.ts';
import { fromMeasured, toLength } from './measured.ts';

type GarmentDto = components['schemas']['GarmentDto'];
type LayerDto = components['schemas']['LayerDto'];

/** A thickness that was not written: the store wants one, and takes its uncertainty as the sign that it is a guess (mm). */
const GUESSED = { value: 3, unit: 'mm', u: 1 } as const;
const GUESSED_LAYER = { value: 2, unit: 'mm', u: 1 } as const;

export function toLayerRecord(layer: LayerNotes | null): LayerDto | null {
  if (layer === null) return null;
  const thickness = thicknessOf(layer.thickness) !== null ? toLength(layer.thickness, 'small') : null;
  return { sleeves: layer.sleeves, thickness: thickness ?? GUESSED_LAYER };
}

export const fromLayerRecord = (layer: LayerDto | null | undefined): LayerNotes | null =>
  layer == null
    ? null
    : { sleeves: layer.sleeves, thickness: fromMeasured(layer.thickness.u == null ? layer.thickness : null, 'small') };

export function toGarmentRecord(notes: GarmentNotes): GarmentDto {
  return {
    title: notes.name.trim().slice(0, 120),
    construction: notes.construction,
    measures: GARMENT_DIMENSIONS.flatMap((name) => {
      const measured = toLength(notes.measures[name], 'length');
      return measured === null || lengthOf(name, notes.measures[name]) === null
        ? []
        : [{ name, ...measured, ...(name === 'sleeve-length' ? { from: notes.sleeveFrom } : {}) }];
    }),
    thickness: (thicknessOf(notes.thickness) !== null ? toLength(notes.thickness, 'small') : null) ?? GUESSED,
    layer: toLayerRecord(notes.layer),
    wornStretched: notes.wornStretched,
    wears: notes.wears,
  };
}

export function fromGarmentRecord(record: GarmentDto): GarmentNotes {
  const measures = record.measures.map((measure): [GarmentDimension, Typed] => [
    measure.name,
    fromMeasured(measure, 'length'),
  ]);
  const wears = Object.entries(record.wears ?? {}).filter(([, value]) => value != null);
  return {
    name: record.title ?? '',
    construction: record.construction,
    measures: Object.fromEntries(measures),
    sleeveFrom: record.measures.find(({ name }) => name === 'sleeve-length')?.from ?? 'seam',
    thickness: fromMeasured(record.thickness.u == null ? record.thickness : null, 'small'),
    layer: fromLayerRecord(record.layer),
    wornStretched: record.wornStretched ?? false,
    wears: Object.fromEntries(wears) as GarmentNotes['wears'],
    confirmed: {},
  };
}
