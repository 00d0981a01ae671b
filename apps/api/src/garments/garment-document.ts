import type { Construction, Garment, GarmentDimension, Layer } from '#garment';
import type { How } from '#measure';
import { measuredDocument, type MeasuredDocument } from '../measures/measured-document.ts';
import { HOW_DEFAULT } from '../measures/taken.ts';
import { saidWears } from './garment-input.ts';
import type { GarmentDto, SLEEVE_FROM } from './garment.dto.ts';
import type { LayerDto } from './layer.dto.ts';

export interface LayerDocument {
  readonly thickness: MeasuredDocument;
  readonly sleeves: Layer['sleeves'];
}

export interface GarmentMeasureDocument extends MeasuredDocument {
  readonly name: GarmentDimension;
  readonly how: How;
  readonly takenAt: string | null;
  /** Of sleeve-length; null for every other. */
  readonly from: (typeof SLEEVE_FROM)[number] | null;
}

/** A garment as it is kept: what was entered, with what was left out said plainly. */
export interface GarmentDocument {
  readonly title: string;
  readonly construction: Construction;
  readonly measures: readonly GarmentMeasureDocument[];
  readonly thickness: MeasuredDocument;
  readonly layer: LayerDocument | null;
  readonly wornStretched: boolean;
  readonly wears: Garment['wears'];
}

export function garmentDocument(dto: GarmentDto): GarmentDocument {
  return {
    title: dto.title ?? '',
    construction: dto.construction,
    measures: dto.measures.map((measure) => ({
      name: measure.name,
      how: measure.how ?? HOW_DEFAULT,
      takenAt: measure.takenAt ?? null,
      from: measure.name === 'sleeve-length' ? (measure.from ?? 'seam') : null,
      ...measuredDocument(measure),
    })),
    thickness: measuredDocument(dto.thickness),
    layer: layerDocument(dto.layer),
    wornStretched: dto.wornStretched ?? false,
    wears: saidWears(dto.wears),
  };
}

export function layerDocument(layer: LayerDto | null | undefined): LayerDocument | null {
  return layer == null ? null : { thickness: measuredDocument(layer.thickness), sleeves: layer.sleeves };
}
