import { useMemo } from 'react';
import type { Notebook } from '../notebook/notebook.ts';
import { lazyModule } from '../page/lazy-module.ts';
import type { Reckoned } from './reckoned.ts';

const useReckoner = lazyModule(() => import('./reckoner.ts'));

/** What comes of the notebook; null until there is something to reckon with and the reckoner has come. */
export function useReckoned(notebook: Notebook, wanted: boolean): Reckoned | null {
  const reckoner = useReckoner(wanted);
  return useMemo(() => (wanted && reckoner ? reckoner.reckon(notebook) : null), [wanted, reckoner, notebook]);
}
