import { flushSync } from 'react-dom';
import { pageStore, usePage } from './page-store.ts';

/** Renders what depends on it before the browser lays out the printed page. */
const setPrinting = (printing: boolean) => (): void => flushSync(() => pageStore.setState({ printing }));

window.addEventListener('beforeprint', setPrinting(true));
window.addEventListener('afterprint', setPrinting(false));

/** True while the browser prints. */
export const usePrinting = (): boolean => usePage(({ printing }) => printing);
