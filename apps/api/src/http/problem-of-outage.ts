import type { Outage, OutageReason } from '../storage/outage.ts';
import { HttpProblem } from './problem.ts';

const RETRY_AFTER_S = 5;

const WORDS: Readonly<Record<OutageReason, string>> = {
  unreachable: 'The database does not answer.',
  overloaded: 'The database has too much to do.',
  locked: 'Another program keeps the database to itself.',
  full: 'The disk of the database is full.',
  'read-only': 'The database cannot be written.',
  moved: 'The file of the database was moved, replaced or deleted while it was in use. Put it back, or start again.',
  damaged: 'The database is damaged. Restore a backup.',
};

/** 503, with what is known of whether the request was carried out. */
export function problemOfOutage({ reason, written }: Outage): HttpProblem {
  const known = written === 'no' ? 'Nothing was written.' : 'Whether anything was written is not known: read it again.';
  return new HttpProblem(503, `database-${reason}`, `${WORDS[reason]} ${known}`, [], RETRY_AFTER_S);
}
