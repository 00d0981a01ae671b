import { memo, useDeferredValue, useEffect, useLayoutEffect, useRef, type ReactNode } from 'react';
import type { LeafName } from '../state/leaves.ts';
import { openFoundLeaf } from '../state/open-leaf.ts';
import styles from './Leaf.module.css';

/**
 * One leaf of the notebook. A closed one costs nothing: it is not rendered again and has no style or layout. The browser's own
 * search still finds what is on it and opens it.
 */
export const Leaf = memo(
  function Leaf({
    name,
    open,
    children,
  }: {
    readonly name: LeafName;
    readonly open: boolean;
    readonly children: ReactNode;
  }) {
    const place = useRef<HTMLDivElement>(null);
    // The open leaf renders first, the others after it.
    const drawn = useDeferredValue(true, open);
    useLayoutEffect(() => {
      if (place.current) place.current.hidden = open ? false : 'until-found';
    }, [open]);
    useEffect(() => {
      const element = place.current;
      const found = (): void => openFoundLeaf(name);
      element?.addEventListener('beforematch', found);
      return () => element?.removeEventListener('beforematch', found);
    }, [name]);
    return (
      <div ref={place} className={styles.leaf}>
        {(drawn || open) && children}
      </div>
    );
  },
  (before, after) => !before.open && !after.open,
);
