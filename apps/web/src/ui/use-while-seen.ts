import { useDeferredValue, useEffect, useState, type RefObject } from 'react';
import { usePrinting } from '../state/printing.ts';

/** A value: at once while its element is on the screen or printed, otherwise after more urgent rendering. */
export function useWhileSeen<T>(place: RefObject<HTMLElement | null>, value: T): T {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const element = place.current;
    if (element === null) return undefined;
    const observer = new IntersectionObserver((entries) => setSeen(entries.at(-1)?.isIntersecting === true));
    observer.observe(element);
    return () => observer.disconnect();
  }, [place]);
  const printing = usePrinting();
  const later = useDeferredValue(value);
  return seen || printing ? value : later;
}
