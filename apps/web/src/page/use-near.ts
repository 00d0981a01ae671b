import { useEffect, useState, type RefObject } from 'react';

/** How far below the screen counts as near. */
const MARGIN = '1500px';

/** True once an element has come near the screen, or has been made its aim by a link. */
export function useNear(place: RefObject<HTMLElement | null>): boolean {
  const [near, setNear] = useState(false);
  useEffect(() => {
    const element = place.current;
    if (element === null || near) return undefined;
    const observer = new IntersectionObserver((entries) => entries.some((it) => it.isIntersecting) && setNear(true), {
      rootMargin: MARGIN,
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [place, near]);
  return near;
}
