import type { Design, EaseChoice } from '#fit';
import { layerInput } from '../garments/garment-input.ts';
import { differenceOf, mmOf } from '../measures/read-entered.ts';
import type { DesignDocument, EaseDocument } from './design-document.ts';

/** The design in mm. */
export function designInput(design: DesignDocument): Design {
  return {
    silhouette: design.silhouette,
    construction: design.construction,
    neckline: design.neckline,
    length: design.length,
    basis: design.basis,
    hem: design.hem,
    customLengthMm: mmOf(design.customLength),
    ease: easeInput(design.ease),
    easeChangeMm: differenceOf(design.easeChange) ?? 0,
    layer: layerInput(design.layer),
    bandMm: mmOf(design.band),
    frontBandMm: mmOf(design.frontBand),
    overlapMm: mmOf(design.overlap),
    ribMm: mmOf(design.rib),
    neckWidthMm: mmOf(design.neckWidth),
    frontNeckDepthMm: mmOf(design.frontNeckDepth),
    backNeckDepthMm: mmOf(design.backNeckDepth),
    seamAllowanceMm: mmOf(design.seamAllowance) ?? 0,
  };
}

function easeInput(ease: EaseDocument): EaseChoice {
  return 'category' in ease ? ease : { mm: differenceOf(ease) ?? 0 };
}
