import { BODY_DIMENSIONS, bodyProblems, type Body, type BodyDimension, type BodyMeasure } from '#body';
import type { BodyNotes } from '../notebook/notebook.ts';
import { plainNumber, valueIn } from '../reading/read.ts';
import { memoizeLast } from './memoize-last.ts';

/** The body for the reckoning, and what was left out of it because it cannot be right. */
export interface ReadBody {
  readonly body: Body;
  readonly leftOut: ReadonlySet<BodyDimension | 'age'>;
}

export const toBody = memoizeLast((notes: BodyNotes): ReadBody => {
  const measures = BODY_DIMENSIONS.flatMap((name): BodyMeasure[] => {
    const written = notes.measures[name];
    const value = valueIn(written, name === 'weight' ? 'mass' : 'length');
    return value === null ? [] : [{ name, value, how: written?.how ?? notes.takenBy }];
  });
  return withoutImpossible({ figure: notes.figure, ageYears: plainNumber(notes.age, 'zero too'), measures });
});

/** The largest the store takes: a length, mm, and a weight, g. */
const LONGEST_STORED = 5000;
const HEAVIEST_STORED = 500_000;

/** Leaves out what the body module or the store would refuse, so that the rest goes on. */
function withoutImpossible(body: Body): ReadBody {
  const leftOut = new Set<BodyDimension | 'age'>();
  for (const { pointer } of bodyProblems(body)) {
    const [, list, index] = pointer.split('/');
    const measure = list === 'measures' ? body.measures[Number(index)] : undefined;
    leftOut.add(measure?.name ?? 'age');
  }
  for (const { name, value } of body.measures)
    if (value > (name === 'weight' ? HEAVIEST_STORED : LONGEST_STORED)) leftOut.add(name);
  return {
    body: {
      ...body,
      ageYears: leftOut.has('age') ? null : body.ageYears,
      measures: body.measures.filter(({ name }) => !leftOut.has(name)),
    },
    leftOut,
  };
}
