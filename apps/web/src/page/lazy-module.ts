import { useEffect, useSyncExternalStore } from 'react';

/** A hook that gives a module once it has come, null until then. It is fetched when it is first wanted, and again after a lost connection. */
export function lazyModule<M>(load: () => Promise<M>): (wanted: boolean) => M | null {
  let module: M | null = null;
  let asked = false;
  const listeners = new Set<() => void>();
  const fetchIt = (): void => {
    if (asked) return;
    asked = true;
    load().then(
      (loaded) => {
        module = loaded;
        listeners.forEach((listener) => listener());
      },
      () => {
        asked = false;
        window.addEventListener('online', fetchIt, { once: true });
      },
    );
  };
  const listen = (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  return (wanted) => {
    useEffect(() => {
      if (wanted) fetchIt();
    }, [wanted]);
    return useSyncExternalStore(listen, () => module);
  };
}
