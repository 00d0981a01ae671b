import { detailOf } from './api-error.ts';
import type { DomainError } from '#measure';
import { fieldError } from '../measures/in-request.ts';
import { HttpProblem } from './problem.ts';

/** Codes that mean something to HTTP. Every other code is a value that cannot be used: 422, with a pointer to it. */
const STATUS: Readonly<Record<string, number>> = {
  'not-found': 404,
  'changed-since': 412,
  'if-match-missing': 428,
  'if-match-unreadable': 400,
  'cursor-unreadable': 400,
  'idempotency-key-unreadable': 400,
  'planner-stopped': 409,
  'hand-off-not-dead': 409,
  'sheet-differs': 409,
};

export function problemOfDomain(error: DomainError): HttpProblem {
  const status = STATUS[error.code] ?? 422;
  const errors = status === 422 ? [fieldError(error)] : [];
  return new HttpProblem(status, error.code, detailOf(error), errors);
}
