import { useEffect, useState, type RefObject } from 'react';

/** The width of an element in CSS pixels, updated as it changes; `before` until it is known. */
export function useWidth(place: RefObject<HTMLElement | null>, before: number): number {
  const [width, setWidth] = useState(before);
  useEffect(() => {
    const element = place.current;
    if (element === null) return undefined;
    const observer = new ResizeObserver(([entry]) => entry && setWidth(Math.round(entry.contentRect.width)));
    observer.observe(element);
    return () => observer.disconnect();
  }, [place]);
  return width;
}
