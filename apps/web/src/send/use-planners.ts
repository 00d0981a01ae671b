import { useEffect, useState } from 'react';
import { listPlanners, type Planner } from '../api/planner-repository.ts';

/** The stored planners, newest first; null until they have loaded. */
interface Planners {
  readonly planners: readonly Planner[] | null;
  readonly lost: boolean;
  /** Replaces a planner, or adds a new one at the front. */
  put(planner: Planner): void;
  drop(id: string): void;
}

export function usePlanners(): Planners {
  const [planners, setPlanners] = useState<readonly Planner[] | null>(null);
  const [lost, setLost] = useState(false);
  useEffect(() => {
    let wanted = true;
    const load = (): void => {
      listPlanners().then(
        (found) => {
          if (!wanted) return;
          setPlanners(found);
          setLost(false);
        },
        () => wanted && setLost(true),
      );
    };
    load();
    window.addEventListener('online', load);
    return () => {
      wanted = false;
      window.removeEventListener('online', load);
    };
  }, []);
  const put = (planner: Planner): void =>
    setPlanners((all) =>
      all?.some(({ id }) => id === planner.id)
        ? all.map((one) => (one.id === planner.id ? planner : one))
        : [planner, ...(all ?? [])],
    );
  const drop = (gone: string): void => setPlanners((all) => all?.filter(({ id }) => id !== gone) ?? null);
  return { planners, lost, put, drop };
}
