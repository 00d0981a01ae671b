import { AddressClosed } from '../addresses/checked-lookup.ts';

/** Why a planner could not be asked, and what that means for the maker. */
export const FAILURES = {
  'timed-out': 'The planner did not answer within 20 seconds.',
  'address-closed':
    'The planner’s name leads to an address that is not public; the operator opens others with HANDOFF_ALLOW.',
  'name-unknown': 'The planner’s name is not known; check its address.',
  'not-reached': 'Nobody answers at the planner’s address.',
  'broken-off': 'The connection broke off before the planner answered.',
  'not-secure': 'No secure connection: the planner’s certificate cannot be trusted, or it does not speak https.',
  'not-http': 'What answers at the planner’s address is not HTTP.',
  'without-address': 'The planner has no address any more.',
  'secret-unreadable': 'The planner’s signing secret was sealed with another key; make a new secret.',
} as const;
export type Failure = keyof typeof FAILURES;

const BY_CODE: Readonly<Record<string, Failure>> = {
  ENOTFOUND: 'name-unknown',
  EAI_AGAIN: 'name-unknown',
  ECONNREFUSED: 'not-reached',
  EHOSTUNREACH: 'not-reached',
  ENETUNREACH: 'not-reached',
  EADDRNOTAVAIL: 'not-reached',
  ETIMEDOUT: 'timed-out',
};

/** Its time is up. */
export class TimedOut extends Error {}

export function failureOf(error: unknown): Failure {
  if (error instanceof AddressClosed) return 'address-closed';
  if (error instanceof TimedOut) return 'timed-out';
  const { code = '' } = error as { code?: string };
  if (code.startsWith('HPE_')) return 'not-http';
  if (/CERT|SELF_SIGNED|UNABLE_TO|TLS|SSL|EPROTO/.test(code)) return 'not-secure';
  return BY_CODE[code] ?? 'broken-off';
}
