import { useEffect, useState, type RefObject } from 'react';

/** True while any of an element is on the screen. */
export function useOnScreen(place: RefObject<HTMLElement | null>): boolean {
  const [onScreen, setOnScreen] = useState(false);
  useEffect(() => {
    const element = place.current;
    if (element === null) return undefined;
    const observer = new IntersectionObserver((entries) => setOnScreen(entries.at(-1)?.isIntersecting === true));
    observer.observe(element);
    return () => observer.disconnect();
  }, [place]);
  return onScreen;
}
