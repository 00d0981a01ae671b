import type { Basis, EaseCategory, Hem, LengthChoice, Neckline, Silhouette } from '#fit';
import type { Construction } from '#garment';
import { layerDocument, type LayerDocument } from '../garments/garment-document.ts';
import type { Measured } from '../measures/measured.ts';
import { lengthDocument, type LengthDocument } from '../measures/measured-document.ts';
import type { DesignDto } from './design.dto.ts';
import type { EaseDto } from './ease.dto.ts';

const EASE_DEFAULT = { category: 'classic', place: 0.5 } as const;

export type EaseDocument = { readonly category: EaseCategory; readonly place: number } | LengthDocument;

/** A design as it is kept beside a sheet: what was entered, with what was left out said plainly. */
export interface DesignDocument {
  readonly silhouette: Silhouette;
  readonly construction: Construction;
  readonly length: LengthChoice;
  readonly neckline: Neckline;
  readonly basis: Basis;
  readonly hem: Hem;
  readonly ease: EaseDocument;
  readonly easeChange: LengthDocument | null;
  readonly layer: LayerDocument | null;
  readonly customLength: LengthDocument | null;
  readonly band: LengthDocument | null;
  readonly frontBand: LengthDocument | null;
  readonly overlap: LengthDocument | null;
  readonly rib: LengthDocument | null;
  readonly neckWidth: LengthDocument | null;
  readonly frontNeckDepth: LengthDocument | null;
  readonly backNeckDepth: LengthDocument | null;
  readonly seamAllowance: LengthDocument | null;
}

export function designDocument(dto: Omit<DesignDto, 'problems'>): DesignDocument {
  return {
    silhouette: dto.silhouette,
    construction: dto.construction,
    length: dto.length,
    neckline: dto.neckline,
    basis: dto.basis ?? 'body',
    hem: dto.hem ?? 'straight',
    ease: easeDocument(dto.ease),
    easeChange: chosen(dto.easeChange),
    layer: layerDocument(dto.layer),
    customLength: chosen(dto.customLength),
    band: chosen(dto.band),
    frontBand: chosen(dto.frontBand),
    overlap: chosen(dto.overlap),
    rib: chosen(dto.rib),
    neckWidth: chosen(dto.neckWidth),
    frontNeckDepth: chosen(dto.frontNeckDepth),
    backNeckDepth: chosen(dto.backNeckDepth),
    seamAllowance: chosen(dto.seamAllowance),
  };
}

function easeDocument(ease: EaseDto | null | undefined): EaseDocument {
  if (ease == null) return EASE_DEFAULT;
  if (ease.category == null) return lengthDocument(ease);
  return { category: ease.category, place: ease.place ?? EASE_DEFAULT.place };
}

function chosen(length: Measured | null | undefined): LengthDocument | null {
  return length == null ? null : lengthDocument(length);
}
