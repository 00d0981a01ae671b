import type { Design, EaseChoice } from '#fit';
import type { DesignLength, DesignNotes } from '../notebook/notebook.ts';
import { valueIn } from '../reading/read.ts';
import { memoizeLast } from './memoize-last.ts';
import { toLayer } from './to-garment.ts';

/** Classic ease, where her own number cannot be read yet. */
const MEANWHILE: EaseChoice = { category: 'classic', place: 0.5 };

export const toDesign = memoizeLast((notes: DesignNotes): Design => {
  const length = (name: DesignLength): number | null => valueIn(notes.lengths[name]);
  const customLengthMm = length('customLength');
  return {
    silhouette: notes.silhouette,
    construction: notes.construction,
    neckline: notes.neckline,
    // A length of her own that is not written yet is the regular one meanwhile.
    length: notes.length === 'custom' && customLengthMm === null ? 'regular' : notes.length,
    customLengthMm: notes.length === 'custom' ? customLengthMm : null,
    basis: notes.basis,
    hem: notes.hem,
    ease: toEase(notes),
    easeChangeMm: valueIn(notes.easeChange, 'signed') ?? 0,
    layer: toLayer(notes.layer),
    bandMm: length('band'),
    frontBandMm: length('frontBand'),
    overlapMm: length('overlap'),
    ribMm: length('rib'),
    neckWidthMm: length('neckWidth'),
    frontNeckDepthMm: length('frontNeckDepth'),
    backNeckDepthMm: length('backNeckDepth'),
    seamAllowanceMm: length('seamAllowance') ?? 0,
  };
});

function toEase({ ease, place, ownEase }: DesignNotes): EaseChoice {
  if (ease !== 'own') return { category: ease, place };
  const mm = valueIn(ownEase, 'signed');
  return mm === null ? MEANWHILE : { mm };
}
