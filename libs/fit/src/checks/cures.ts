import { CONSTRUCTIONS } from '../constructions/index.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import type { OpeningPlace } from '../design/design.ts';
import type { Closing, Cure } from '../messages/cure.ts';
import type { Choices } from '../design/choices.ts';
import type { FoundRemedy, KnownGarment, RemedySearch, Situation } from './check.ts';

/** The cures whose condition holds. */
export const those = (...cures: readonly (Cure | false)[]): Cure[] => cures.filter((cure) => cure !== false);

/** More ease, or less, where that way helps; with a garment that fits it is said beside that one's. */
export function easeThat(way: 'more' | 'less', ease: Situation['ease']): Cure | false {
  if (ease?.way !== way) return false;
  return ease.ofGarment ? `${way}-ease-than-garment` : `${way}-ease`;
}

/** How an opening closes. A baby's shoulders overlap, and need no buttons to come off in a mouth. */
export const closingOf = ({ figure }: Pick<KnownGarment, 'figure'>, at: OpeningPlace): Closing =>
  figure === 'baby' && at === 'shoulders' ? 'overlap' : 'buttons';

/** A body already made has its width and its fabric. */
export const widerBody = (choices: Choices, cures: Cure[]): Cure[] =>
  bodyIsMade(choices) ? ['wider-or-stretchier-body-again'] : cures;

/** What an armhole is called. */
export const armholeOf = ({ construction }: Choices): 'raglan' | 'armhole' =>
  CONSTRUCTIONS[construction].hasArmhole ? 'armhole' : 'raglan';

/** Whether an armhole is still to be worked, and has room to spare as far as is known. */
export function hasArmholeToSpare({ choices, garment, isFine, marginOf }: Situation): boolean {
  if (bodyIsMade(choices) || garment.rounded.armhole.fixed) return false;
  return isFine('armhole') || Number.isNaN(marginOf('armhole'));
}

/** A hem that follows the hip, and is narrower than the body above it. */
export const hemIsNarrowest = ({ choices, garment: { girths }, v }: KnownGarment): boolean =>
  choices.hem === 'tapered' && choices.hipReached && v(girths.hemInner) < v(girths.bodyInner) - 1e-6;

/** A wider body by more ease, if it is still to be made. */
export const moreEaseUnlessMade = (search: RemedySearch): FoundRemedy[] =>
  bodyIsMade(search.choices) ? [] : search.moreEase();
