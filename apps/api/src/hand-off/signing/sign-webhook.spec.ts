import { Webhook } from 'standardwebhooks';
import { describe, expect, it } from 'vitest';
import { signWebhook } from './sign-webhook.ts';
import { keyOf, newWebhookSecret } from './webhook-secret.ts';

const now = (): number => Math.floor(Date.now() / 1000);

describe('signWebhook', () => {
  it('signs the published example (Standard Webhooks 1.0.0, test vector of its reference library)', () => {
    const secret = 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw';
    const headers = signWebhook('msg_p5jXN8AQM9LWM0D4loKWxJek', 1614265330, '{"test": 2432232314}', [secret]);
    expect(headers['webhook-signature']).toBe('v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=');
  });

  it('is taken by a verifier that nobody here wrote, whatever the text', () => {
    const secret = newWebhookSecret();
    const body = '{"title":"Hafen – “lang” ½ 🧶"}';
    expect(new Webhook(secret).verify(body, { ...signWebhook('a.b', now(), body, [secret]) })).toEqual(
      JSON.parse(body),
    );
  });

  it('passes with the old and the new secret while one replaces the other', () => {
    const [old, fresh, other] = [newWebhookSecret(), newWebhookSecret(), newWebhookSecret()];
    const headers = { ...signWebhook('id', now(), '{}', [fresh, old]) };
    expect(() => new Webhook(old).verify('{}', headers)).not.toThrow();
    expect(() => new Webhook(fresh).verify('{}', headers)).not.toThrow();
    expect(() => new Webhook(other).verify('{}', headers)).toThrow();
  });

  it('does not pass with another body, id or time', () => {
    const secret = newWebhookSecret();
    const headers = { ...signWebhook('id', now(), '{}', [secret]) };
    const verify = (body: string, change: object) => () => new Webhook(secret).verify(body, { ...headers, ...change });
    expect(verify('{ }', {})).toThrow();
    expect(verify('{}', { 'webhook-id': 'ie' })).toThrow();
    expect(verify('{}', { 'webhook-timestamp': String(now() + 1) })).toThrow();
  });
});

it('a new secret holds 32 random bytes', () => {
  const [one, other] = [newWebhookSecret(), newWebhookSecret()];
  expect(one).toMatch(/^whsec_[A-Za-z0-9+/]{43}=$/);
  expect(keyOf(one)).toHaveLength(32);
  expect(one).not.toBe(other);
});
