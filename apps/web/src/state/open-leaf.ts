import { flushSync } from 'react-dom';
import { leafOf, type LeafName } from './leaves.ts';
import { pageStore } from './page-store.ts';

/** Opens a leaf at once, so that the browser finds the place that it scrolls to next. */
const openLeaf = (leaf: LeafName): void => flushSync(() => pageStore.setState({ openLeaf: leaf }));

const openAddressedLeaf = (): void => openLeaf(leafOf(location.hash));

/** For a link within the page: opens its leaf before the browser follows the link, scrolls and moves the focus. */
function followLink({ target, button, altKey, ctrlKey, metaKey, shiftKey }: MouseEvent): void {
  if (button !== 0 || altKey || ctrlKey || metaKey || shiftKey || !(target instanceof Element)) return;
  const link = target.closest<HTMLAnchorElement>('a[href^="#"]');
  if (link) openLeaf(leafOf(link.hash));
}

document.addEventListener('click', followLink);
window.addEventListener('popstate', openAddressedLeaf);
window.addEventListener('hashchange', openAddressedLeaf);

/** Opens a closed leaf on which the browser's own search found something, and puts it in the address. */
export function openFoundLeaf(leaf: LeafName): void {
  if (leafOf(location.hash) !== leaf) history.pushState(null, '', `#${leaf}`);
  openLeaf(leaf);
}
