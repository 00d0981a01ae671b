import { startTransition, useEffect, useState } from 'react';

/** A value, once everything more urgent is on the screen; what takes it in is drawn bit by bit, and dropped for a newer one. */
export function useLater<T>(value: T, afterMs = 0): T {
  const [later, setLater] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => startTransition(() => setLater(() => value)), afterMs);
    return () => clearTimeout(timer);
  }, [value, afterMs]);
  return later;
}
