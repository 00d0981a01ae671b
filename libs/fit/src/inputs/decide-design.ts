import type { GarmentProfile } from '#garment';
import type { Design, DesignWish, EaseChoice } from '../design/design.ts';
import { fitError } from '../design/fit-errors.ts';
import type { Favourites } from '../evidence/favourites.ts';

/** What is known where a design is decided. */
interface Known {
  /** The garment that the design may be based on. */
  readonly garment: GarmentProfile | null;
  readonly favourites: Favourites | null;
}

/** Classic ease, in its middle, where none was chosen and no garment has one. */
const EASE_DEFAULT: EaseChoice = { category: 'classic', place: 0.5 };

/**
 * What was wished, with what was left out decided: a garment that fits and has a chest width is the basis, its ease and its length are kept; without one the body
 * is, with classic ease and a regular length.
 * @throws DomainError `garment-missing`, `garment-length-missing`, `favourites-too-few`, with a pointer into the design
 */
export function decideDesign(wish: DesignWish, { garment, favourites }: Known): Design {
  const basis = wish.basis ?? (garment?.values['chest-width'] ? 'both' : 'body');
  if (basis !== 'body' && garment === null) throw fitError('garment-missing', { for: basis }, '/basis');
  const kept = basis === 'body' ? null : garment;
  const length = wish.length ?? (kept?.values['shoulder-to-hem'] ? 'as-garment' : 'regular');
  if (length === 'as-garment' && !garment?.values['shoulder-to-hem'])
    throw fitError('garment-length-missing', {}, '/length');
  return { ...wish, basis, length, ease: easeOf(wish, kept, { garment, favourites }) };
}

function easeOf({ ease }: DesignWish, kept: GarmentProfile | null, { garment, favourites }: Known): EaseChoice {
  if (ease === null) return kept === null ? EASE_DEFAULT : { as: 'garment', changeMm: 0 };
  if (!('as' in ease)) return ease;
  if (ease.as === 'favourites') {
    if (favourites === null) throw fitError('favourites-too-few', {}, '/ease');
    return { mm: favourites.mean };
  }
  if (garment === null) throw fitError('garment-missing', { for: 'ease' }, '/ease');
  return ease;
}
