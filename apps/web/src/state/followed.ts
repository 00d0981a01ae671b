import { useSyncExternalStore } from 'react';

/** A value apart from the page's parts, which every part that uses it follows. */
export interface Followed<T> {
  readonly now: () => T;
  readonly set: (next: T) => void;
  readonly use: () => T;
}

export function followed<T>(first: T): Followed<T> {
  let value = first;
  const listeners = new Set<() => void>();
  const listen = (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  const now = (): T => value;
  return {
    now,
    set: (next) => {
      if (next === value) return;
      value = next;
      listeners.forEach((listener) => listener());
    },
    use: () => useSyncExternalStore(listen, now),
  };
}
