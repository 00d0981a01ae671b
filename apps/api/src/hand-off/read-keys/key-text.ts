import { createHash, randomBytes } from 'node:crypto';

const PREFIX = 'easewright_';
const CHANCE_BYTES = 32;
const SHOWN = PREFIX.length + 6;

/** A new key as it is given to a planner, once. */
export const newKeyText = (): string => PREFIX + randomBytes(CHANCE_BYTES).toString('base64url');

/** What may be shown of a key for ever. */
export const shownOf = (key: string): string => key.slice(0, SHOWN);

export const hashOf = (key: string): string => createHash('sha256').update(key).digest('hex');
