import ipaddr from 'ipaddr.js';
import { ApiError } from '../../http/api-error.ts';
import type { AddressPolicy } from './address-policy.ts';

/** A URL's host as an address written as a number, without the brackets of IPv6; null for a name. */
export function literalAddress(url: URL): string | null {
  const host = url.hostname.replace(/^\[|\]$/g, '');
  return ipaddr.isValid(host) ? host : null;
}

/**
 * Reads the address a planner is reached at. A name is only looked up, and checked, when a connection is opened; what
 * can be checked now is checked now.
 *
 * @throws DomainError `address-unreadable`, `address-not-https`, `address-closed`
 */
export function readPlannerAddress(text: string, policy: AddressPolicy): URL {
  if (!URL.canParse(text))
    throw new ApiError('address-unreadable', 'Give the whole address: https://planner.example/take');
  const url = new URL(text);
  if (url.username !== '' || url.password !== '') {
    throw new ApiError(
      'address-unreadable',
      'Leave the name and password out of the address; every hand-off is signed.',
    );
  }
  if (url.hash !== '') throw new ApiError('address-unreadable', 'Leave the part after # out; it is never sent.');
  const literal = literalAddress(url);
  if (url.protocol === 'http:') {
    const loopback = literal ?? (url.hostname === 'localhost' ? '127.0.0.1' : '');
    if (policy.allowsUnencrypted(loopback)) return url;
  }
  if (url.protocol !== 'https:') throw new ApiError('address-not-https', 'The address must start with https://');
  if (literal !== null && !policy.allows(literal)) {
    throw new ApiError(
      'address-closed',
      `${literal} is no public address; the operator opens others with HANDOFF_ALLOW.`,
    );
  }
  return url;
}
