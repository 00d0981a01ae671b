import type { NoParams } from '#measure';

/** The parameters of a message that needs none. */
export const NONE: NoParams = Object.freeze({});
