import type { Choices, OpeningChoice } from '../design/choices.ts';
import type { OpeningPlace } from '../design/design.ts';
import { INPUTS } from '../model/inputs.ts';
import { keepsBack, keepsFront, keepsWidth } from '../model/neck.ts';
import type { Evaluated } from './evaluated.ts';

/** Lengths within this of one another are equal: what is left is rounding, mm. */
const SAME = 1e-6;

/** Evaluates a garment for other choices. */
type Evaluate = (choices: Choices) => Evaluated;

/** Whether the head passes, or is not known: with its margin through a neck that the rules give, without through one that is all the maker's. */
function passes({ choices, model, evaluation }: Evaluated): boolean {
  const { neck, headPasses } = model.garment;
  const own = keepsWidth(choices) && keepsFront(choices) && keepsBack(choices);
  return !(evaluation.value(own ? INPUTS.head : neck.head) - evaluation.value(headPasses) > SAME);
}

/** Whether an opening has a place, and is no longer than that. */
function hasPlace({ choices, model, evaluation }: Evaluated): boolean {
  const { opening } = model.garment;
  if (!opening) return false;
  const { length, place } = opening;
  return place === null ? !isSeam(choices.opening.at) : !(evaluation.value(length) > evaluation.value(place) + SAME);
}

const isSeam = (at: OpeningPlace): boolean => at === 'shoulder' || at === 'shoulders';

/**
 * A garment with its neck opened where no widening lets the head pass: as the maker asked, or else at one shoulder, at both, or at the back,
 * the first where the opening has its place. An opening of her own that is longer than its place ends with it.
 */
export function resolveOpening(closed: Evaluated, evaluate: Evaluate): Evaluated {
  const { choices } = closed;
  const { asked, ownLength } = choices.opening;
  const opened = (change: Partial<OpeningChoice>): Evaluated =>
    evaluate({ ...choices, neckScale: 'opened', opening: { ...choices.opening, ...change } });
  if (ownLength && !hasPlace(closed)) {
    const whole = evaluate({ ...choices, neckScale: 'as-is', opening: { ...choices.opening, how: 'whole' } });
    return passes(whole) ? whole : opened({ how: 'whole' });
  }
  if (choices.silhouette === 'cardigan' || passes(closed)) return closed;
  if (asked !== null) return choices.neckScale === 'as-is' ? closed : opened({});
  for (const at of ['shoulder', 'shoulders'] as const) {
    const there = opened({ at, how: 'needed' });
    if (hasPlace(there)) return there;
  }
  return opened({ at: 'back', how: 'needed' });
}
