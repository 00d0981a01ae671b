import { say } from '../messages.ts';
import type { LeafName } from '../state/leaves.ts';
import styles from './NextLeafLink.module.css';

/** At the foot of a leaf: the way to the next. */
export const NextLeafLink = ({ to }: { readonly to: LeafName }) => (
  <p className={styles.next}>
    <a href={`#${to}`}>{say.leaves.next(say[to].title)}</a>
  </p>
);
