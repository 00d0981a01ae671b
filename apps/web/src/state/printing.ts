import { flushSync } from 'react-dom';
import { followed } from './followed.ts';

const printing = followed(false);

/** What depends on it is drawn before the paper is. */
const become = (now: boolean) => (): void => flushSync(() => printing.set(now));

window.addEventListener('beforeprint', become(true));
window.addEventListener('afterprint', become(false));

/** True while the browser prints. */
export const usePrinting = printing.use;
