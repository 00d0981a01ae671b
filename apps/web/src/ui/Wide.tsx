import type { ReactNode } from 'react';
import styles from './Wide.module.css';

/** A frame that scrolls content wider than a small screen; it takes the focus, so that keys scroll it too. */
export function Wide({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className={styles.wide} tabIndex={0} role="group" aria-label={label}>
      {children}
    </div>
  );
}
