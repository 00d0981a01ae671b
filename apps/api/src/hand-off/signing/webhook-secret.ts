import { randomBytes } from 'node:crypto';

const PREFIX = 'whsec_';
const KEY_BYTES = 32;

/** A new signing secret, one per planner: `whsec_` and the base64 of 32 random bytes (Standard Webhooks 1.0.0: 24 to 64). */
export const newWebhookSecret = (): string => PREFIX + randomBytes(KEY_BYTES).toString('base64');

/** The key inside a secret: the bytes whose base64 follows `whsec_`. */
export const keyOf = (secret: string): Buffer => Buffer.from(secret.slice(PREFIX.length), 'base64');
