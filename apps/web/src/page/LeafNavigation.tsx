import { memo } from 'react';
import { say } from '../messages.ts';
import { LEAVES, type LeafName } from '../state/leaves.ts';
import styles from './LeafNavigation.module.css';

/** The links to the leaves; they stay in reach. */
export const LeafNavigation = memo(function LeafNavigation({ open }: { readonly open: LeafName }) {
  return (
    <nav className={styles.navigation} aria-label={say.leaves.title}>
      <ol>
        {LEAVES.map((leaf) => (
          <li key={leaf}>
            <a href={`#${leaf}`} aria-current={leaf === open ? 'page' : undefined}>
              {say.leaves.short[leaf]}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
});
