import { flushSync } from 'react-dom';
import { followed } from '../state/followed.ts';
import { leafOf, type LeafName } from './leaves.ts';

const open = followed(leafOf(location.hash));

/** Turns to a leaf at once, so that the browser finds in its place what it goes to next. */
const turnTo = (leaf: LeafName): void => flushSync(() => open.set(leaf));

const turnToAddress = (): void => turnTo(leafOf(location.hash));

/** A link within the page: its leaf lies open before the browser follows it, scrolls there and gives the focus. */
function toLink({ target, button, altKey, ctrlKey, metaKey, shiftKey }: MouseEvent): void {
  if (button !== 0 || altKey || ctrlKey || metaKey || shiftKey || !(target instanceof Element)) return;
  const link = target.closest<HTMLAnchorElement>('a[href^="#"]');
  if (link) turnTo(leafOf(link.hash));
}

document.addEventListener('click', toLink);
window.addEventListener('popstate', turnToAddress);
window.addEventListener('hashchange', turnToAddress);

/** The browser has found something on a closed leaf, by its own search or by the address. */
export function foundOn(leaf: LeafName): void {
  if (leafOf(location.hash) !== leaf) history.pushState(null, '', `#${leaf}`);
  turnTo(leaf);
}

/** The leaf that lies open. The address says which, so a reload keeps it and the way back leads to the one before. */
export const useOpenLeaf = open.use;
