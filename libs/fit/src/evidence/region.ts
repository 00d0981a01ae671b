import type { BentTerm } from '#body';
import type { Sweater, SweaterRegion } from './sweater.ts';

/** A region that wears close or roomy has so much less or more ease than the sweater, mm (assumed). */
const MORE_OR_LESS = 40;

/** Of a region that nothing is said of, the spread is so much wider (assumed). */
const UNSAID = 1.5;

/** How the ease of a region follows from the sweater's: a term of the hidden ease, with what is added to it, and the factor on its spread. */
interface RegionEase {
  readonly term: number | BentTerm;
  readonly added: number;
  readonly spread: number;
}

/** The term f of the sweater's ease E, where the region wears as said: f(E ∓ 40). */
export function regionEase(
  { wears }: Sweater,
  region: SweaterRegion,
  term: number | BentTerm,
  half: number,
): RegionEase {
  const said = wears[region];
  const shift = said === 'close' ? -MORE_OR_LESS * half : said === 'roomy' ? MORE_OR_LESS * half : 0;
  const spread = said === undefined ? UNSAID : 1;
  if (typeof term === 'number') return { term, added: term * shift, spread };
  // f(E + shift) bends where E + shift = at.
  return { term: { ...term, at: term.at - shift }, added: term.below * shift, spread };
}
