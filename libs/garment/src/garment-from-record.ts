import { HOW_DEFAULT, readMeasured } from '#measure';
import { DEFAULT_THICKNESS_U } from './default-garment-u.ts';
import type { GarmentRecord } from './garment-record.ts';
import type { Garment, GarmentMeasure, Layer } from './garment.ts';
import type { LayerRecord } from './layer-record.ts';

type MeasureRecord = GarmentRecord['measures'][number];

/** The garment in mm. @throws DomainError where a size cannot be read */
export function garmentFromRecord(record: GarmentRecord): Garment {
  const { size, u } = readMeasured(record.thickness, 'length');
  return {
    title: record.title ?? '',
    construction: record.construction,
    measures: record.measures.map(measureFromRecord),
    thicknessMm: size,
    thicknessU: u ?? DEFAULT_THICKNESS_U,
    layer: layerFromRecord(record.layer),
    wornStretched: record.wornStretched ?? false,
    fits: record.fits ?? null,
    neckline: record.neckline ?? null,
    sleeve: record.sleeve ?? 'long',
    wears: wearsFromRecord(record.wears),
  };
}

export function layerFromRecord(layer: LayerRecord | null | undefined): Layer | null {
  if (layer == null) return null;
  const { size, u } = readMeasured(layer.thickness, 'length');
  return { thicknessMm: size, u: u ?? DEFAULT_THICKNESS_U, sleeves: layer.sleeves };
}

function measureFromRecord(record: MeasureRecord): GarmentMeasure {
  const { name, how, from, confirmed } = record;
  const { size, u } = readMeasured(record, 'length');
  return {
    name,
    value: size,
    how: how ?? HOW_DEFAULT,
    ...(u !== undefined && { u }),
    ...(from != null && { from }),
    ...(confirmed && { confirmed }),
  };
}

/** Only the regions that were answered for. */
const wearsFromRecord = (wears: GarmentRecord['wears']): Garment['wears'] =>
  Object.fromEntries(Object.entries(wears ?? {}).filter(([, how]) => how != null));
