import { BODY_DIMENSIONS, type BodyDimension } from '#body';
import type { components } from '../api.generated.ts';
import type { BodyNotes, WrittenMeasure } from '../notebook/notebook.ts';
import type { Quantity } from '../reading/read.ts';
import { plainNumber } from '../reading/read.ts';
import { toBody } from '../compute/to-body.ts';
import { fromMeasured, toMeasured } from './measured.ts';

type BodyDto = components['schemas']['BodyDto'];

const quantityOf = (name: BodyDimension): Quantity => (name === 'weight' ? 'mass' : 'length');

/** A body as the store takes it: what could be read and believed, as it was written. */
export function toBodyRecord(notes: BodyNotes): BodyDto {
  const { leftOut } = toBody(notes);
  return {
    title: notes.name.trim().slice(0, 120),
    figure: notes.figure,
    age: leftOut.has('age') ? null : plainNumber(notes.age, 'zero too'),
    estimate: notes.skipped !== 'open',
    measures: BODY_DIMENSIONS.flatMap((name) => {
      const written = notes.measures[name];
      const measured = toMeasured(written, quantityOf(name));
      if (measured === null || leftOut.has(name)) return [];
      return [{ name, ...measured, how: written?.how ?? notes.takenBy, takenAt: written?.on ?? null }];
    }),
  };
}

export function fromBodyRecord(record: BodyDto): BodyNotes {
  const takenBy =
    record.measures.length > 0 && record.measures.every(({ how }) => how === 'trained') ? 'trained' : 'home';
  const measures = record.measures.map((measure): [BodyDimension, WrittenMeasure] => [
    measure.name,
    {
      ...fromMeasured(measure, quantityOf(measure.name)),
      ...(measure.how && measure.how !== takenBy ? { how: measure.how } : {}),
      ...(measure.takenAt ? { on: measure.takenAt } : {}),
    },
  ]);
  return {
    name: record.title ?? '',
    figure: record.figure ?? 'unsaid',
    age: record.age == null ? '' : String(record.age),
    takenBy,
    skipped: record.estimate === false ? 'open' : 'guessed',
    measures: Object.fromEntries(measures),
  };
}
