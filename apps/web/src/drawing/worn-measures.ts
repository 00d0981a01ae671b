import type { DimensionName } from '#fit';
import type { Garment } from '#garment';
import type { TargetSheet } from '#target-sheet';
import { finishedDimension } from '../compute/finished-dimension.ts';
import { DRAWN_CONSTRUCTIONS } from './drawn-construction.ts';
import type { WornMeasures } from './worn-shape.ts';

/** The sweater to make, for the drawing on the body; null while its width or length is not known. */
export function wornFromSheet(sheet: TargetSheet): WornMeasures | null {
  const at = (name: DimensionName): number | null => finishedDimension(sheet, name);
  const chestWidth = at('chest-width');
  const shoulderToHem = at('shoulder-to-hem') ?? at('centre-back-length');
  if (chestWidth === null || shoulderToHem === null) return null;
  const { construction, neckline, silhouette } = sheet.design;
  return {
    chestWidth,
    hemWidth: at('hem-width') ?? chestWidth,
    shoulderToHem,
    armholeDepth: at('armhole-depth') ?? at('raglan-depth'),
    across: at('cross-back-width') ?? chestWidth,
    neckWidth: at('neck-width'),
    frontNeckDepth: at('front-neck-depth'),
    neckToCuff: silhouette === 'vest' ? null : at('neck-to-cuff'),
    sleeveTopWidth: at('sleeve-top-width'),
    cuffWidth: at('cuff-width'),
    thicknessMm: sheet.fabric.thickness,
    construction,
    neckline,
    opensInFront: silhouette === 'cardigan',
  };
}

/** The sweater that fits, for the same drawing. */
export function wornFromGarment(garment: Garment): WornMeasures | null {
  const values = new Map(garment.measures.map(({ name, value }) => [name, value]));
  const chestWidth = values.get('chest-width');
  if (chestWidth === undefined) return null;
  const wide = chestWidth * DRAWN_CONSTRUCTIONS[garment.construction].wornAcrossShare;
  const across = values.get('cross-back-width') ?? wide;
  const sleeve = garment.measures.find(({ name }) => name === 'sleeve-length');
  return {
    chestWidth,
    hemWidth: values.get('hem-width') ?? chestWidth,
    shoulderToHem: values.get('shoulder-to-hem') ?? chestWidth * 1.2,
    armholeDepth: values.get('armhole-depth') ?? null,
    across,
    neckWidth: values.get('neck-width') ?? null,
    frontNeckDepth: values.get('front-neck-depth') ?? null,
    neckToCuff: sleeve === undefined ? null : sleeve.from === 'centre-back' ? sleeve.value : across / 2 + sleeve.value,
    sleeveTopWidth: values.get('sleeve-top-width') ?? null,
    cuffWidth: values.get('cuff-width') ?? null,
    thicknessMm: garment.thicknessMm,
    construction: garment.construction,
    neckline: 'crew',
    opensInFront: false,
  };
}
