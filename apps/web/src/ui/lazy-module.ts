import { useEffect, useSyncExternalStore } from 'react';

/** While the server does not answer, it is asked again after so long. */
const AGAIN_MS = 3000;

/** True where the server answers at all; what it says does not matter. */
const answers = (): Promise<boolean> =>
  fetch('/health', { cache: 'no-store' }).then(
    () => true,
    () => false,
  );

/**
 * A hook that gives a module once it has come, null until then. It is fetched when it is first wanted, and only once the server
 * answers: a browser remembers an import that failed and never tries it again.
 */
export function lazyModule<M>(load: () => Promise<M>): (wanted: boolean) => M | null {
  let module: M | null = null;
  let asked = false;
  const listeners = new Set<() => void>();
  const fetchIt = async (): Promise<void> => {
    if (asked) return;
    asked = true;
    while (!(await answers())) await new Promise((again) => setTimeout(again, AGAIN_MS));
    module = await load();
    listeners.forEach((listener) => listener());
  };
  const listen = (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  return (wanted) => {
    useEffect(() => {
      if (wanted) void fetchIt();
    }, [wanted]);
    return useSyncExternalStore(listen, () => module);
  };
}
