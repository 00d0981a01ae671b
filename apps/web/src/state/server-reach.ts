import { followed } from './followed.ts';

/** Whether the store answered when it was last asked; `unasked` until then. */
export type Reach = 'unasked' | 'reached' | 'lost';

export const { set: setServerReach, use: useServerReach } = followed<Reach>('unasked');
