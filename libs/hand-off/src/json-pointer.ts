import type { TheirNameFault } from '#advice-text';

/** Keys that reach into an object's own machinery; never a field. */
const RESERVED = new Set(['__proto__', 'constructor', 'prototype']);

/** A token of a pointer that is an element of a list: 0, 1, 2 … without leading zeros (RFC 6901, section 4). */
export const isIndex = (token: string): boolean => /^(?:0|[1-9][0-9]*)$/.test(token);

/** One token written into a JSON Pointer: `~` as `~0`, `/` as `~1` (RFC 6901, section 3). */
export const escapeToken = (token: string): string => token.replaceAll('~', '~0').replaceAll('/', '~1');

type ParsedPointer = { readonly tokens: readonly string[] } | { readonly wrong: TheirNameFault };

/**
 * Reads a JSON Pointer (RFC 6901) that names a field to fill. Refused: the whole document (`""`), no leading
 * slash, a `~` that is neither `~0` nor `~1`, the `-` after a list's end, and keys such as `__proto__`.
 */
export function parsePointer(pointer: string): ParsedPointer {
  if (!pointer.startsWith('/')) return { wrong: { code: 'no-slash', params: { pointer } } };
  if (/~(?![01])/.test(pointer)) return { wrong: { code: 'tilde-not-escaped', params: { pointer } } };
  const tokens = pointer
    .slice(1)
    .split('/')
    .map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~'));
  const reserved = tokens.find((token) => RESERVED.has(token));
  if (reserved !== undefined) return { wrong: { code: 'name-reserved', params: { name: reserved } } };
  if (tokens.includes('-')) return { wrong: { code: 'element-not-numbered', params: { pointer } } };
  return { tokens };
}
