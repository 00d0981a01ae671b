import { useSyncExternalStore } from 'react';

/** Whether the store answered when it was last asked; `unasked` until then. */
export type Reach = 'unasked' | 'reached' | 'lost';

let reach: Reach = 'unasked';
const listeners = new Set<() => void>();

export function setReach(next: Reach): void {
  if (next === reach) return;
  reach = next;
  listeners.forEach((listener) => listener());
}

export const useReach = (): Reach =>
  useSyncExternalStore(
    (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    () => reach,
  );
