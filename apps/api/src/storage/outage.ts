import { QueryFailedError } from 'typeorm';

/** Why the database cannot do its work just now. */
export type OutageReason = 'unreachable' | 'overloaded' | 'locked' | 'full' | 'read-only' | 'moved' | 'damaged';

/**
 * Codes of SQLite, of PostgreSQL (its manual, appendix A) and of the operating system, by what they mean here. A code of
 * PostgreSQL is looked up whole, then by its class, which is its first two characters.
 */
const REASONS: Readonly<Record<string, OutageReason>> = {
  SQLITE_BUSY: 'locked',
  SQLITE_LOCKED: 'locked',
  SQLITE_FULL: 'full',
  SQLITE_READONLY: 'read-only',
  SQLITE_IOERR: 'unreachable',
  SQLITE_CANTOPEN: 'unreachable',
  SQLITE_CORRUPT: 'damaged',
  SQLITE_NOTADB: 'damaged',
  ENOSPC: 'full',
  EDQUOT: 'full',
  EROFS: 'read-only',
  ECONNREFUSED: 'unreachable',
  ECONNRESET: 'unreachable',
  ETIMEDOUT: 'unreachable',
  EPIPE: 'unreachable',
  ENOTFOUND: 'unreachable',
  EAI_AGAIN: 'unreachable',
  EHOSTUNREACH: 'unreachable',
  '08': 'unreachable',
  '57P01': 'unreachable',
  '57P02': 'unreachable',
  '57P03': 'unreachable',
  '25006': 'read-only',
  '53100': 'full',
  '53': 'overloaded',
  '57014': 'overloaded',
  '55P03': 'locked',
  '40001': 'locked',
  '40P01': 'locked',
  '58': 'damaged',
  XX001: 'damaged',
  XX002: 'damaged',
};

/** What the PostgreSQL driver and TypeORM say without a code: the kind of the error and its message begin so. */
const MESSAGES: readonly (readonly [string, OutageReason])[] = [
  ['QueryRunnerAlreadyReleasedError', 'unreachable'], // what TypeORM does when a connection breaks in a transaction
  ['TransactionNotStartedError', 'unreachable'],
  ['ConnectionIsNotSetError', 'unreachable'],
  ['Error: timeout exceeded when trying to connect', 'overloaded'],
  ['Error: Query read timeout', 'unreachable'],
  ['Error: Connection terminated', 'unreachable'],
  ['Error: Client was closed', 'unreachable'],
  ['Error: Client has encountered a connection error', 'unreachable'],
];

/** The database cannot do its work just now. `written` is "no" where it is certain that nothing was. */
export class Outage extends Error {
  constructor(
    readonly reason: OutageReason,
    readonly written: 'no' | 'unknown',
    cause?: unknown,
  ) {
    super(`The database: ${reason}.`, { cause });
    this.name = 'Outage';
  }
}

/** What a failure of the database driver says of the database; null where the fault is not there. */
export function outageReasonOf(error: unknown): OutageReason | null {
  if (error instanceof Outage) return error.reason;
  const driverError: unknown = error instanceof QueryFailedError ? error.driverError : error;
  const code: unknown = (driverError as { code?: unknown } | null)?.code;
  const known = typeof code === 'string' ? (REASONS[code] ?? REASONS[code.slice(0, 2)]) : undefined;
  if (known !== undefined) return known;
  const text = String(driverError);
  return MESSAGES.find(([start]) => text.startsWith(start))?.[1] ?? null;
}
