import { useEffect, useMemo } from 'react';
import type { BodyModel } from '#body';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import { lazyModule } from '../ui/lazy-module.ts';
import type { OpenQuestions, Computation } from '../compute/computation.ts';

const useReckoner = lazyModule(() => import('../compute/compute.ts'));
/** A file of its own; fetched when there is a first adult measure to guess the others from. */
const useBodyModel = lazyModule(async () => (await import('../compute/compute.ts')).loadBodyModel());

export interface Everything {
  /** Null until there is something to reckon with and the reckoner has come. */
  readonly computation: Computation | null;
  readonly openQuestions: OpenQuestions;
  readonly model: BodyModel | null;
}

const NONE = {};
const noQuestions = (is: 'begin' | 'unknown'): OpenQuestions => ({
  next: () => ({ is }),
  ofBody: () => NONE,
  ofGarment: () => NONE,
});
const NOTHING_WRITTEN = noQuestions('begin');
const NOT_YET = noQuestions('unknown');

/** What comes of the notebook, in the same frame as what she writes. */
export function useComputation(notebook: Notebook, wanted: boolean): Everything {
  const { figure, measures } = openEntry(notebook.bodies).notes;
  const adult = figure !== 'child' && figure !== 'baby' && Object.keys(measures).length > 0;
  const reckoner = useReckoner(wanted);
  const model = useBodyModel(adult);
  useEffect(() => reckoner?.rehearsed(model), [reckoner, model]);
  const computation = useMemo(
    () => (wanted && reckoner ? reckoner.reckon(notebook, model) : null),
    [wanted, reckoner, notebook, model],
  );
  const openQuestions = useMemo(
    () =>
      computation && reckoner
        ? reckoner.openQuestions(computation, notebook, model)
        : wanted
          ? NOT_YET
          : NOTHING_WRITTEN,
    [computation, reckoner, notebook, model, wanted],
  );
  return { computation, openQuestions, model };
}
