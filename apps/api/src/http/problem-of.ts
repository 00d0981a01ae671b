import { HttpException, Logger } from '@nestjs/common';
import { DomainError } from '#measure';
import { errorPlace } from '../log/error-place.ts';
import { Conflict } from '../storage/conflict.ts';
import { Outage } from '../storage/outage.ts';
import { HttpProblem } from './problem.ts';
import { problemOfDomain } from './problem-of-domain.ts';
import { problemOfOutage } from './problem-of-outage.ts';

const logger = new Logger('Fault');

/** The problem that an error means. Nothing of a request is logged: for a fault of ours, its kind and its place in the code. */
export function problemOf(error: unknown, requestId?: string): HttpProblem {
  if (error instanceof HttpProblem) return error;
  if (error instanceof DomainError) return problemOfDomain(error);
  if (error instanceof Conflict) {
    const words = 'What this refers to was erased, or made, by another request at the same moment. Read it again.';
    return new HttpProblem(409, 'changed-meanwhile', words);
  }
  if (error instanceof Outage) {
    logger.error({ msg: `The database: ${error.reason}`, requestId });
    return problemOfOutage(error);
  }
  const status = error instanceof HttpException ? error.getStatus() : statusOf(error);
  if (status < 500) return problemOfStatus(status);
  logger.error({ msg: errorPlace(error), requestId });
  return new HttpProblem(500, 'fault', 'This is a fault of the service, not of your request.');
}

/** Errors of express and its body parser carry the status they mean. */
function statusOf(error: unknown): number {
  const status: unknown = (error as { status?: unknown } | null)?.status;
  return typeof status === 'number' && status >= 400 ? status : 500;
}

function problemOfStatus(status: number): HttpProblem {
  if (status === 404)
    return new HttpProblem(404, 'not-found', 'There is nothing at this address; /docs lists what there is.');
  return new HttpProblem(status, 'unreadable', 'The request cannot be read; /docs says what can be sent.');
}
