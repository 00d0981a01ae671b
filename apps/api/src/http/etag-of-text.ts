import { createHash } from 'node:crypto';

/** The ETag of a text, in its quotes. */
export const etagOfText = (text: string): string =>
  `"${createHash('sha256').update(text).digest('base64url').slice(0, 22)}"`;
