import type { ReactNode } from 'react';
import styles from './Wide.module.css';

/** What may be wider than a small screen moves within its own frame; the frame takes the focus, so that keys move it too. */
export function Wide({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    <div className={styles.wide} tabIndex={0} role="group" aria-label={label}>
      {children}
    </div>
  );
}
