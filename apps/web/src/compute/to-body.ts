import {
  BODY_MEASURE_RECORD,
  bodyFromRecord,
  bodyProblems,
  type Body,
  type BodyDimension,
  type BodyMeasure,
  type BodyRecord,
} from '#body';
import { readingOf } from '#measure';
import type { BodyNotes } from '../notebook/notebook.ts';
import { bodyAsWritten } from '../reading/body-record.ts';
import { memoizeLast } from './memoize-last.ts';

/** The body for the computation, the record of it, and what was left out of both because it cannot be right. */
export interface ReadBody {
  readonly body: Body;
  readonly record: BodyRecord;
  readonly leftOut: ReadonlySet<BodyDimension | 'age'>;
}

export const toBody = memoizeLast((notes: BodyNotes): ReadBody => {
  const written = bodyAsWritten(notes);
  const leftOut = impossibleOf(bodyFromRecord(written));
  const record = {
    ...written,
    age: leftOut.has('age') ? null : (written.age ?? null),
    measures: written.measures.filter(({ name }) => !leftOut.has(name)),
  };
  return { body: bodyFromRecord(record), record, leftOut };
});

/** What the body module or the store would refuse: without it, the rest goes on. */
function impossibleOf(body: Body): ReadonlySet<BodyDimension | 'age'> {
  const problems = bodyProblems(body).map(({ pointer }) => {
    const [, list, index] = pointer.split('/');
    return (list === 'measures' ? body.measures[Number(index)]?.name : undefined) ?? 'age';
  });
  return new Set([...problems, ...body.measures.filter(isBeyondStore).map(({ name }) => name)]);
}

function isBeyondStore({ name, value }: BodyMeasure): boolean {
  const limits = readingOf({ name } as object, BODY_MEASURE_RECORD.value.as)?.limits;
  return limits !== undefined && value > limits.max;
}
