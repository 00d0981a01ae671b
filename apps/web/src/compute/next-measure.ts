import { nextToTake } from '#target-sheet';
import type { NextMeasureAdvice, Computation } from './computation.ts';
import { finishedDimension } from './finished-dimension.ts';

/** The advice on the measurement to take next. */
export function adviseNextMeasure({ input, wearer, profile, sheet, cannot }: Computation): NextMeasureAdvice {
  if (wearer === null) return { is: 'unknown' };
  const next = nextToTake(input, wearer);
  if (next === null) return { is: sheet !== null ? 'done' : cannot === null ? 'begin' : 'unknown' };
  const { name, before, after } = next;
  if (before !== null && after !== null) return { is: 'surer', name, before, after };
  const some = sheet !== null && finishedDimension(sheet, 'chest-width') !== null;
  return { is: 'take', name, without: profile?.values[name] ? 'guess' : some ? 'gaps' : 'nothing' };
}
