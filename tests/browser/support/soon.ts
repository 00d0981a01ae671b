import { expect } from 'vitest';

/** Longer than the page waits before it stores what was written, on a slow machine too. */
const PATIENCE = { timeout: 20_000 };

/** What is to be so before long. */
export const soon = <T>(get: () => T) => expect.poll(get, PATIENCE);
