import { atLeast, atMost, constant, min, minus, plus, positive, times, whereKnown, type Quantity } from '#measure';
import type { Choices } from '../design/choices.ts';
import { OPENING_EDGES, type OpeningPlace } from '../design/design.ts';
import { INPUTS } from './inputs.ts';

/** How a neck opens. mm */
export interface Opening {
  /** o, of each place that opens. */
  readonly length: Quantity;
  /** The length of its place; null for a seam that this garment does not have. */
  readonly place: Quantity | null;
}

/** What an opening adds to what passes a neck: its two edges, of both shoulders four; none for a neck that does not open. */
export const timesOfOpening = (at: OpeningPlace, length: Quantity): Quantity[] =>
  at === 'none' ? [] : [times(OPENING_EDGES[at], length)];

/** All that an opening depends on. `seam` is the shoulder's or the raglan's that may open, null where there is none. */
interface BeforeOpening {
  readonly passes: Quantity;
  readonly head: Quantity;
  readonly seam: Quantity | null;
  /** The centre of the back and of the front, above their ribs. */
  readonly back: Quantity;
  readonly front: Quantity;
}

/** The opening of a neck; null for one that does not open. */
export function opening(choices: Choices, before: BeforeOpening): Opening | null {
  const { at, how } = choices.opening;
  if (at === 'none') return null;
  const ofPlace = placeOf(at, before);
  const place = ofPlace && positive(ofPlace);
  const missing = positive(minus(before.head, before.passes));
  const needed = whereKnown(missing, times(1 / OPENING_EDGES[at], missing), constant(0));
  const least = place === null ? INPUTS.openingLeast : min(INPUTS.openingLeast, place);
  const wanted = atLeast(needed, least);
  switch (how) {
    case 'own':
      return { length: plus(INPUTS.ownOpening), place };
    case 'whole':
      return { length: plus(place ?? INPUTS.openingMost), place };
    case 'asked':
      return {
        length: atMost(wanted, at === 'back' || at === 'front' ? INPUTS.openingMost : (place ?? INPUTS.openingMost)),
        place,
      };
    case 'needed':
      return { length: plus(wanted), place };
  }
}

function placeOf(at: Exclude<OpeningPlace, 'none'>, { seam, back, front }: BeforeOpening): Quantity | null {
  switch (at) {
    case 'shoulder':
    case 'shoulders':
      return seam;
    case 'back':
      return back;
    case 'front':
      return front;
  }
}
