import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { Evaluated } from './evaluated.ts';
import { bodyIsMade } from '../design/made-pieces.ts';
import type { SleeveCure } from '../messages/no-advice-codes.ts';

/** What would give a sleeve where no cap, or raglan, of its width joins an armhole that is known; null where one does. */
export function cureForNoSleeve({ choices, model, evaluation }: Evaluated): SleeveCure | null {
  const { sleeve, armhole } = model.garment;
  if (sleeve === null || CONSTRUCTIONS[choices.construction].sleeveTopIs === 'seam') return null;
  const v = evaluation.value;
  if (!Number.isNaN(v(sleeve.above!)) || Number.isNaN(v(armhole.seam) + v(sleeve.top))) return null;
  if (choices.made.sleeveTop) return 'narrower-sleeve-again';
  return bodyIsMade(choices) ? 'narrower-sleeve-or-deeper-armhole-again' : 'squared-drop';
}
