import { useEffect, useMemo } from 'react';
import type { BodyModel } from '#body';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/shelf.ts';
import { lazyModule } from '../page/lazy-module.ts';
import type { Asking, Reckoned } from './reckoned.ts';

const useReckoner = lazyModule(() => import('./reckoner.ts'));
/** A file of its own; fetched when there is a first adult measure to guess the others from. */
const useBodyModel = lazyModule(async () => (await import('./reckoner.ts')).loadBodyModel());

export interface Everything {
  /** Null until there is something to reckon with and the reckoner has come. */
  readonly reckoned: Reckoned | null;
  readonly asking: Asking;
  readonly model: BodyModel | null;
}

const NONE = {};
const askingOf = (is: 'begin' | 'unknown'): Asking => ({
  next: () => ({ is }),
  ofBody: () => NONE,
  ofGarment: () => NONE,
});
const NOTHING_WRITTEN = askingOf('begin');
const NOT_YET = askingOf('unknown');

/** What comes of the notebook, in the same frame as what she writes. */
export function useReckoned(notebook: Notebook, wanted: boolean): Everything {
  const { figure, measures } = openEntry(notebook.bodies).notes;
  const adult = figure !== 'child' && figure !== 'baby' && Object.keys(measures).length > 0;
  const reckoner = useReckoner(wanted);
  const model = useBodyModel(adult);
  useEffect(() => reckoner?.rehearsed(model), [reckoner, model]);
  const reckoned = useMemo(
    () => (wanted && reckoner ? reckoner.reckon(notebook, model) : null),
    [wanted, reckoner, notebook, model],
  );
  const asking = useMemo(
    () => (reckoned && reckoner ? reckoner.asking(reckoned, notebook, model) : wanted ? NOT_YET : NOTHING_WRITTEN),
    [reckoned, reckoner, notebook, model, wanted],
  );
  return { reckoned, asking, model };
}
