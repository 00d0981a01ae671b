import type { Choices } from './choices.ts';
import type { OpeningPlace } from './design.ts';

/**
 * The choices that an opening asked for at a place leads to, null leaving it to the head, with a length of the maker's own or without. Whether
 * the neck needs one is known with its numbers.
 */
export function openingAsked(asked: OpeningPlace | null, given: boolean): Pick<Choices, 'opening' | 'neckScale'> {
  const opens = asked !== null && asked !== 'none';
  const ownLength = opens && given;
  return {
    opening: { asked, ownLength, at: asked ?? 'none', how: ownLength ? 'own' : 'asked' },
    neckScale: opens && !ownLength ? 'as-is' : 'for-head',
  };
}
