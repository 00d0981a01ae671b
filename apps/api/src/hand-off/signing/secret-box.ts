import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';
import { ApiError } from '../../http/api-error.ts';

const CIPHER = 'aes-256-gcm';
const VERSION = 'v1.';
const IV_BYTES = 12;
const TAG_BYTES = 16;
export const KEY_BYTES = 32;

/**
 * Keeps secrets unreadable where they are stored (AES-256-GCM). What is sealed opens only with the same key and for the
 * same owner, so that a row copied to another planner is of no use there.
 */
export class SecretBox {
  constructor(private readonly key: Buffer) {}

  seal(secret: string, owner: string): string {
    const iv = randomBytes(IV_BYTES);
    const cipher = createCipheriv(CIPHER, this.key, iv).setAAD(Buffer.from(owner));
    const sealed = Buffer.concat([iv, cipher.update(secret, 'utf8'), cipher.final(), cipher.getAuthTag()]);
    return VERSION + sealed.toString('base64url');
  }

  /** @throws DomainError `secret-unreadable` when it was sealed with another key, for another owner, or was changed */
  open(sealed: string, owner: string): string {
    try {
      const bytes = Buffer.from(sealed.slice(VERSION.length), 'base64url');
      const decipher = createDecipheriv(CIPHER, this.key, bytes.subarray(0, IV_BYTES), { authTagLength: TAG_BYTES })
        .setAAD(Buffer.from(owner))
        .setAuthTag(bytes.subarray(-TAG_BYTES));
      return decipher.update(bytes.subarray(IV_BYTES, -TAG_BYTES), undefined, 'utf8') + decipher.final('utf8');
    } catch {
      throw new ApiError(
        'secret-unreadable',
        'The signing secret was sealed with another key. Put the old key back (HANDOFF_KEY or hand-off.key), or make a new secret.',
      );
    }
  }
}
