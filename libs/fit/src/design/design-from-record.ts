import { layerFromRecord } from '#garment';
import { readMeasured, type Measured } from '#measure';
import type { Design, EaseChoice } from './design.ts';
import type { DesignRecord } from './design-record.ts';

/** Classic ease, in its middle, where none was chosen. */
const EASE_DEFAULT: EaseChoice = { category: 'classic', place: 0.5 };

/** The design in mm. @throws DomainError where a length cannot be read */
export function designFromRecord(record: DesignRecord): Design {
  return {
    silhouette: record.silhouette,
    construction: record.construction,
    neckline: record.neckline,
    length: record.length,
    basis: record.basis ?? 'body',
    hem: record.hem ?? 'straight',
    customLengthMm: lengthFrom(record.customLength),
    ease: easeFrom(record.ease),
    easeChangeMm: differenceFrom(record.easeChange) ?? 0,
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

function easeFrom(ease: DesignRecord['ease']): EaseChoice {
  if (ease == null) return EASE_DEFAULT;
  if (ease.category != null) return { category: ease.category, place: ease.place ?? 0.5 };
  return { mm: differenceFrom(ease) ?? 0 };
}

const lengthFrom = (measured: Measured | null | undefined): number | null =>
  measured == null ? null : readMeasured(measured, 'length').size;

const differenceFrom = (measured: Measured | null | undefined): number | null =>
  measured == null ? null : readMeasured(measured, 'difference').size;
