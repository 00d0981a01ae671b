import { useEffect, useMemo } from 'react';
import type { BodyModel } from '#body';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import { lazyModule } from '../ui/lazy-module.ts';
import type { OpenQuestions, Computation } from '../compute/computation.ts';

const useComputeModule = lazyModule(() => import('../compute/compute.ts'));
/** A separate file, loaded when the first measurement of an adult or a sweater is there to estimate the others from. */
const useBodyModel = lazyModule(async () => (await import('../compute/compute.ts')).loadBodyModel());

interface ComputedNotebook {
  /** Null until something is entered and the module has loaded. */
  readonly computation: Computation | null;
  readonly openQuestions: OpenQuestions;
  readonly model: BodyModel | null;
}

const NONE = {};
const noQuestions = (is: 'begin' | 'unknown'): OpenQuestions => ({
  next: () => ({ is }),
  ofBody: () => NONE,
  ofGarment: () => NONE,
  growthSince: () => null,
});
const NOTHING_ENTERED = noQuestions('begin');
const NOT_COMPUTED = noQuestions('unknown');

/** Computes the notebook in the same frame as the change to it. */
export function useComputation(notebook: Notebook, wanted: boolean): ComputedNotebook {
  const { figure, measures } = openEntry(notebook.bodies).notes;
  const isMeasured =
    Object.keys(measures).length > 0 ||
    notebook.garments.entries.some(({ notes }) => Object.keys(notes.measures).length > 0);
  const adult = figure !== 'child' && figure !== 'baby' && isMeasured;
  const compute = useComputeModule(wanted);
  const model = useBodyModel(adult);
  useEffect(() => compute?.warmUpCompute(model), [compute, model]);
  const computation = useMemo(
    () => (wanted && compute ? compute.compute(notebook, model) : null),
    [wanted, compute, notebook, model],
  );
  const openQuestions = useMemo(
    () =>
      computation && compute
        ? compute.openQuestions(computation, notebook, model)
        : wanted
          ? NOT_COMPUTED
          : NOTHING_ENTERED,
    [computation, compute, notebook, model, wanted],
  );
  return { computation, openQuestions, model };
}
