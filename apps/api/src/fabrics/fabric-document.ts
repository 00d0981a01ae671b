import type { Craft, Directions, Fibre, Stitch } from '#fabric';
import { measuredDocument, type MeasuredDocument } from '../measures/measured-document.ts';
import type { FabricDto } from './fabric.dto.ts';

/** A fabric as it is kept: what was entered, with what was left out said plainly. */
export interface FabricDocument {
  readonly title: string;
  readonly craft: Craft;
  readonly stitch: Stitch | null;
  readonly thickness: MeasuredDocument | null;
  readonly wrapsPerInch: number | null;
  readonly metresPer100g: number | null;
  readonly fibre: Fibre | null;
  readonly weightCategory: number | null;
  readonly stretch: Directions | null;
  readonly ribStretch: number | null;
  readonly growth: Directions | null;
  readonly gramsPerSquareMetre: number | null;
}

export function fabricDocument(dto: Omit<FabricDto, 'problems'>): FabricDocument {
  return {
    title: dto.title ?? '',
    craft: dto.craft,
    stitch: dto.stitch ?? null,
    thickness: dto.thickness == null ? null : measuredDocument(dto.thickness),
    wrapsPerInch: dto.wrapsPerInch ?? null,
    metresPer100g: dto.metresPer100g ?? null,
    fibre: dto.fibre ?? null,
    weightCategory: dto.weightCategory ?? null,
    stretch: directions(dto.stretch),
    ribStretch: dto.ribStretch ?? null,
    growth: directions(dto.growth),
    gramsPerSquareMetre: dto.gramsPerSquareMetre ?? null,
  };
}

function directions(given: Directions | null | undefined): Directions | null {
  return given == null ? null : { across: given.across, along: given.along };
}
