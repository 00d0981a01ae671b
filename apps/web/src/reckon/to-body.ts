import { BODY_DIMENSIONS, bodyProblems, type Body, type BodyDimension, type BodyMeasure } from '#body';
import type { BodyNotes } from '../notebook/notebook.ts';
import { plainNumber, valueIn } from '../reading/read.ts';
import { remembering } from './remembering.ts';

/** The body for the reckoning, and what was left out of it because it cannot be right, in words by measure (or `age`). */
export interface ReadBody {
  readonly body: Body;
  readonly leftOut: Readonly<Partial<Record<BodyDimension | 'age', string>>>;
}

export const toBody = remembering((notes: BodyNotes): ReadBody => {
  const measures = BODY_DIMENSIONS.flatMap((name): BodyMeasure[] => {
    const written = notes.measures[name];
    const value = valueIn(written, name === 'weight' ? 'mass' : 'length');
    return value === null ? [] : [{ name, value, how: written?.how ?? notes.takenBy }];
  });
  return withoutImpossible({ figure: notes.figure, ageYears: plainNumber(notes.age), measures });
});

/** Leaves out what the body module would refuse, so that the rest goes on. */
function withoutImpossible(body: Body): ReadBody {
  const leftOut: Partial<Record<BodyDimension | 'age', string>> = {};
  for (const { pointer, message } of bodyProblems(body)) {
    const [, list, index] = pointer.split('/');
    const measure = list === 'measures' ? body.measures[Number(index)] : undefined;
    leftOut[measure?.name ?? 'age'] = message;
  }
  return {
    body: {
      ...body,
      ageYears: leftOut.age === undefined ? body.ageYears : null,
      measures: body.measures.filter(({ name }) => leftOut[name] === undefined),
    },
    leftOut,
  };
}
