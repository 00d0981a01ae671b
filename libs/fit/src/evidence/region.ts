import type { BentTerm } from '#body';
import type { GarmentProfile, Region } from '#garment';
import type { Rules } from '../design/rules.ts';

/** Of a region that nothing is said of, the spread is so much wider (assumed). */
const UNSAID = 1.5;

/** How the ease of a region follows from the sweater's: a term of the hidden ease, with what is added to it, and the factor on its spread. */
interface RegionEase {
  readonly term: number | BentTerm;
  readonly added: number;
  readonly spread: number;
}

/** Whether a region has less or more ease than the sweater, as it is said to wear. */
export function regionShift({ wears }: Pick<GarmentProfile, 'wears'>, region: Region): -1 | 0 | 1 {
  const how = wears[region];
  return how === 'close' ? -1 : how === 'roomy' ? 1 : 0;
}

/** The term f of the sweater's ease E, where the region wears as said: f(E ∓ 40). */
export function regionEase(
  sweater: Pick<GarmentProfile, 'wears'>,
  region: Region,
  term: number | BentTerm,
  sized: Rules,
): RegionEase {
  const shift = regionShift(sweater, region) * sized['region-ease'];
  const spread = sweater.wears[region] === undefined ? UNSAID : 1;
  if (typeof term === 'number') return { term, added: term * shift, spread };
  // f(E + shift) bends where E + shift = at.
  return { term: { ...term, at: term.at - shift }, added: term.below * shift, spread };
}
