import { createHmac } from 'node:crypto';
import { keyOf } from './webhook-secret.ts';

/** The headers by which a planner knows that a delivery is ours, and a repeated one from a new one (Standard Webhooks 1.0.0). */
interface WebhookHeaders {
  /** The same for every attempt of one delivery. */
  readonly 'webhook-id': string;
  /** Whole seconds since 1970; new for every attempt. */
  readonly 'webhook-timestamp': string;
  /** `v1,` and the base64 of HMAC-SHA256 over `{id}.{timestamp}.{body}`; one for each secret, a space between. */
  readonly 'webhook-signature': string;
}

/** Signs a body with each of a planner's secrets: one, or two while the old one is being replaced. */
export function signWebhook(
  id: string,
  timestampSeconds: number,
  body: string,
  secrets: readonly string[],
): WebhookHeaders {
  const signed = `${id}.${timestampSeconds}.${body}`;
  const signatures = secrets.map(
    (secret) => `v1,${createHmac('sha256', keyOf(secret)).update(signed).digest('base64')}`,
  );
  return {
    'webhook-id': id,
    'webhook-timestamp': String(timestampSeconds),
    'webhook-signature': signatures.join(' '),
  };
}
