import { layerFromRecord } from '#garment';
import { readMeasured, type Measured } from '#measure';
import type { DesignWish, EaseWish } from './design.ts';
import type { DesignRecord } from './design-record.ts';

/** What was wished, in mm. @throws DomainError where a length cannot be read */
export function designFromRecord(record: DesignRecord): DesignWish {
  return {
    silhouette: record.silhouette,
    construction: record.construction,
    neckline: record.neckline,
    length: record.length ?? null,
    basis: record.basis ?? null,
    hem: record.hem ?? null,
    customLengthMm: lengthFrom(record.customLength),
    ease: easeFrom(record.ease),
    layer: layerFromRecord(record.layer),
    opening: record.opening ? { at: record.opening.at, lengthMm: lengthFrom(record.opening.length) } : null,
    bandMm: lengthFrom(record.band),
    frontBandMm: lengthFrom(record.frontBand),
    overlapMm: lengthFrom(record.overlap),
    ribMm: lengthFrom(record.rib),
    cuffWidthMm: lengthFrom(record.cuffWidth),
    neckWidthMm: lengthFrom(record.neckWidth),
    frontNeckDepthMm: lengthFrom(record.frontNeckDepth),
    backNeckDepthMm: lengthFrom(record.backNeckDepth),
    seamAllowanceMm: lengthFrom(record.seamAllowance) ?? 0,
  };
}

function easeFrom(ease: DesignRecord['ease']): EaseWish | null {
  if (ease == null) return null;
  if (ease.as === 'favourites') return { as: 'favourites' };
  if (ease.as === 'garment') return { as: 'garment', changeMm: differenceFrom(ease.change) ?? 0 };
  if (ease.category != null) return { category: ease.category, place: ease.place ?? 0.5 };
  return { mm: differenceFrom(ease) ?? 0 };
}

const lengthFrom = (measured: Measured | null | undefined): number | null =>
  measured == null ? null : readMeasured(measured, 'length').size;

const differenceFrom = (measured: Measured | null | undefined): number | null =>
  measured == null ? null : readMeasured(measured, 'difference').size;
