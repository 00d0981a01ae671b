import { nextToTake } from '#target-sheet';
import type { NextSaid, Reckoned } from './reckoned.ts';
import { finished } from './worn-measures.ts';

/** What to say of the measure to take next; a sheet without a width says nothing yet. */
export function nextSaid({ input, profile, sheet, cannot }: Reckoned): NextSaid {
  const next = nextToTake(input, profile);
  if (next === null) return { is: sheet !== null ? 'done' : cannot === null ? 'begin' : 'unknown' };
  const { name, before, after } = next;
  if (before !== null && after !== null) return { is: 'surer', name, before, after };
  const some = sheet !== null && finished(sheet, 'chest-width') !== null;
  return { is: 'take', name, without: profile?.values[name] ? 'guess' : some ? 'gaps' : 'nothing' };
}
