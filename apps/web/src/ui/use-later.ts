import { startTransition, useEffect, useState } from 'react';

/** A value, once everything more urgent is on the screen; what takes it in is drawn bit by bit, and dropped for a newer one. */
export function useLater<T>(value: T): T {
  const [later, setLater] = useState(() => value);
  useEffect(() => {
    const timer = setTimeout(() => startTransition(() => setLater(() => value)));
    return () => clearTimeout(timer);
  }, [value]);
  return later;
}
