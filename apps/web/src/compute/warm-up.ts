import { blankNotebook } from '../notebook/blank.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { withNotes } from '../notebook/collection.ts';

/** So often is it gone through before her first key. */
const TIMES = 100;
/** So much of a rest must be left for one more. */
const ONE_MS = 6;

/** An ordinary body, each time another. */
function example(time: number): Notebook {
  const blank = blankNotebook('cm');
  const measure = (mm: number) => ({ text: String((mm + time) / 10), tape: 'cm' as const });
  const measures = { stature: measure(1680), 'chest-girth': measure(940), 'hip-girth': measure(990) };
  return { ...blank, bodies: withNotes(blank.bodies, (notes) => ({ ...notes, measures })) };
}

/**
 * Reckons what nobody asked for while the browser rests: it makes code fast only once it has run some dozen times, and her
 * first keys should not be those.
 */
export function rehearse(reckon: (notebook: Notebook) => void): void {
  if (!('requestIdleCallback' in window)) return;
  let time = 0;
  const go = (rest: IdleDeadline): void => {
    while (time < TIMES && rest.timeRemaining() > ONE_MS) reckon(example(time++));
    if (time < TIMES) requestIdleCallback(go);
  };
  requestIdleCallback(go);
}
