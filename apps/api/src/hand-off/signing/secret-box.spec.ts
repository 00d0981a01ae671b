import { randomBytes } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SecretBox } from './secret-box.ts';

const key = randomBytes(32);
const box = new SecretBox(key);
/** The last letter of base64 has bits that mean nothing. */
const bytes = (sealed: string): string => Buffer.from(sealed.slice(3), 'base64url').toString('hex');
const unreadable = expect.objectContaining({ code: 'secret-unreadable' });

describe('SecretBox', () => {
  it('opens what it sealed, for the same owner', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string(), (secret, owner) => {
        expect(new SecretBox(key).open(box.seal(secret, owner), owner)).toBe(Buffer.from(secret).toString());
      }),
    );
  });

  it('never seals alike twice, and the sealed text holds nothing of the secret', () => {
    const secret = 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw';
    expect(box.seal(secret, 'a')).not.toBe(box.seal(secret, 'a'));
    expect(box.seal(secret, 'a')).not.toContain('whsec');
  });

  it('does not open for another owner or with another key', () => {
    const sealed = box.seal('secret', 'a');
    expect(() => box.open(sealed, 'b')).toThrow(unreadable);
    expect(() => new SecretBox(randomBytes(32)).open(sealed, 'a')).toThrow(unreadable);
  });

  it('does not open what was changed or cut, and does not say what was in it', () => {
    const sealed = box.seal('secret', 'a');
    fc.assert(
      fc.property(fc.nat({ max: sealed.length - 4 }), fc.constantFrom('A', 'B'), (at, put) => {
        const changed = sealed.slice(0, at + 3) + put + sealed.slice(at + 4);
        if (bytes(changed) !== bytes(sealed)) expect(() => box.open(changed, 'a')).toThrow(unreadable);
        expect(() => box.open(sealed.slice(0, at), 'a')).toThrow(unreadable);
      }),
    );
  });
});
