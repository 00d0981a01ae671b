import { say } from '../messages.ts';
import type { LeafName } from '../state/leaves.ts';
import styles from './NextLeafLink.module.css';

/** The link to the next leaf, at the foot of each. */
export const NextLeafLink = ({ to }: { readonly to: LeafName }) => (
  <p className={styles.next}>
    <a href={`#${to}`}>{say.leaves.next(say[to].title)}</a>
  </p>
);
