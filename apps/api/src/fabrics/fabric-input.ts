import type { Craft, Directions, FabricInput, Fibre, Stitch } from '#fabric';
import type { Measured } from '../measures/measured.ts';
import { lengthOf } from '../measures/read-entered.ts';

/** A fabric as entered, in a request or kept. */
export interface FabricEntered {
  readonly craft: Craft;
  readonly stitch?: Stitch | null;
  readonly thickness?: Measured | null;
  readonly wrapsPerInch?: number | null;
  readonly metresPer100g?: number | null;
  readonly fibre?: Fibre | null;
  readonly weightCategory?: number | null;
  readonly stretch?: Directions | null;
  readonly ribStretch?: number | null;
  readonly growth?: Directions | null;
  readonly gramsPerSquareMetre?: number | null;
}

/** The fabric in mm. */
export function fabricInput(fabric: FabricEntered): FabricInput {
  const thickness = lengthOf(fabric.thickness);
  return {
    craft: fabric.craft,
    stitch: fabric.stitch ?? null,
    thicknessMm: thickness?.size ?? null,
    thicknessU: thickness?.u ?? null,
    wrapsPerInch: fabric.wrapsPerInch ?? null,
    metresPer100g: fabric.metresPer100g ?? null,
    fibre: fabric.fibre ?? null,
    weightCategory: fabric.weightCategory ?? null,
    stretch: fabric.stretch ?? null,
    ribStretch: fabric.ribStretch ?? null,
    growth: fabric.growth ?? null,
    massPerAreaGsm: fabric.gramsPerSquareMetre ?? null,
  };
}
