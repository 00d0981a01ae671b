import { nextToTake } from '#target-sheet';
import type { NextMeasureAdvice, Computation } from './computation.ts';
import { finishedDimension } from './finished-dimension.ts';

/** What to say of the measure to take next; a sheet without a width says nothing yet. */
export function adviseNextMeasure({ input, profile, sheet, cannot }: Computation): NextMeasureAdvice {
  const next = nextToTake(input, profile);
  if (next === null) return { is: sheet !== null ? 'done' : cannot === null ? 'begin' : 'unknown' };
  const { name, before, after } = next;
  if (before !== null && after !== null) return { is: 'surer', name, before, after };
  const some = sheet !== null && finishedDimension(sheet, 'chest-width') !== null;
  return { is: 'take', name, without: profile?.values[name] ? 'guess' : some ? 'gaps' : 'nothing' };
}
