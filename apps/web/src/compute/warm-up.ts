import { blankNotebook } from '../notebook/blank.ts';
import { withNotes } from '../notebook/collection.ts';
import type { Notebook } from '../notebook/notebook.ts';

const RUNS = 100;
/** A run starts only with this much idle time left. */
const RUN_MS = 6;

/** An ordinary body, a different one for each run. */
function inventedNotebook(run: number): Notebook {
  const blank = blankNotebook('cm');
  const measure = (mm: number) => ({ text: String((mm + run) / 10), tape: 'cm' as const });
  const measures = { stature: measure(1680), 'chest-girth': measure(940), 'hip-girth': measure(990) };
  return { ...blank, bodies: withNotes(blank.bodies, (notes) => ({ ...notes, measures })) };
}

/**
 * Runs the computation while the browser is idle: the engine compiles code only after some dozen runs, and these should not be
 * the first key presses. Measured with `npm run bench -- page`, CPU slowed 4×: the first key presses compute in 3 to 5 ms instead
 * of 7 to 15, and the median over the next forty is 3.5 ms instead of 5.
 */
export function warmUp(compute: (notebook: Notebook) => void): void {
  if (!('requestIdleCallback' in window)) return;
  let run = 0;
  const runWhileIdle = (idle: IdleDeadline): void => {
    while (run < RUNS && idle.timeRemaining() > RUN_MS) compute(inventedNotebook(run++));
    if (run < RUNS) requestIdleCallback(runWhileIdle);
  };
  requestIdleCallback(runWhileIdle);
}
