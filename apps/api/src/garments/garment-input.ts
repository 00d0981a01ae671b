import { DEFAULT_THICKNESS_U, type Construction, type Garment, type GarmentDimension, type Layer } from '#garment';
import type { How } from '#measure';
import type { Measured } from '../measures/measured.ts';
import { LENGTH } from '../measures/quantity-kind.ts';
import { readMeasured } from '../measures/read-measured.ts';
import { HOW_DEFAULT } from '../measures/taken.ts';

export interface LayerEntered {
  readonly thickness: Measured;
  readonly sleeves: Layer['sleeves'];
}

export interface GarmentMeasureEntered extends Measured {
  readonly name: GarmentDimension;
  readonly how?: How | null;
  readonly from?: 'seam' | 'centre-back' | null;
}

/** A garment as entered, in a request or kept. */
export interface GarmentEntered {
  readonly construction: Construction;
  readonly measures: readonly GarmentMeasureEntered[];
  readonly thickness: Measured;
  readonly layer?: LayerEntered | null;
  readonly wornStretched?: boolean | null;
  readonly wears?: { readonly [region in keyof Garment['wears']]?: Garment['wears'][region] | null } | null;
}

/** The garment in mm. */
export function garmentInput(garment: GarmentEntered): Garment {
  const thickness = readMeasured(garment.thickness, LENGTH);
  return {
    construction: garment.construction,
    measures: garment.measures.map((measure) => {
      const { size, u } = readMeasured(measure, LENGTH);
      const { name, how, from } = measure;
      return {
        name,
        value: size,
        how: how ?? HOW_DEFAULT,
        ...(u !== undefined && { u }),
        ...(from != null && { from }),
      };
    }),
    thicknessMm: thickness.size,
    thicknessU: thickness.u ?? DEFAULT_THICKNESS_U,
    layer: layerInput(garment.layer),
    wornStretched: garment.wornStretched ?? false,
    wears: saidWears(garment.wears),
  };
}

export function layerInput(layer: LayerEntered | null | undefined): Layer | null {
  if (layer == null) return null;
  const { size, u } = readMeasured(layer.thickness, LENGTH);
  return { thicknessMm: size, u: u ?? DEFAULT_THICKNESS_U, sleeves: layer.sleeves };
}

/** Only what was said. */
export function saidWears(wears: GarmentEntered['wears']): Garment['wears'] {
  return Object.fromEntries(Object.entries(wears ?? {}).filter(([, how]) => how != null));
}
