import { BODY_DIMENSIONS, BODY_RECORD, type BodyDimension, type BodyRecord, type StoredBody } from '#body';
import { storedRecord } from '#measure';
import type { BodyNotes, WrittenMeasure } from '../notebook/notebook.ts';
import { carrying } from './carrying.ts';
import { fromMeasured, toMeasured } from './measured.ts';
import { plainNumber, type Quantity } from './read.ts';

type MeasureRecord = BodyRecord['measures'][number];

const quantityOf = (name: BodyDimension): Quantity => (name === 'weight' ? 'mass' : 'length');

/** What she wrote of a body, as the store takes it: all that can be read, believed or not. */
export function bodyAsWritten(notes: BodyNotes): BodyRecord {
  const carry = carrying<BodyNotes, StoredBody>(notes, fromBodyRecord);
  const measureBefore = (name: BodyDimension) => notes.record?.measures.find((measure) => measure.name === name);
  const measureOf = (name: BodyDimension): MeasureRecord | null => {
    const size = carry<Omit<MeasureRecord, 'name'> | null>(
      ({ measures }) => [measures[name]?.text, measures[name]?.tape, measures[name]?.on],
      () => measureBefore(name) ?? null,
      () => toMeasured(notes.measures[name], quantityOf(name)),
    );
    const taken = { how: howOf(notes, name), takenAt: notes.measures[name]?.on ?? null };
    return size === null ? null : { ...size, name, ...taken };
  };
  return {
    ...notes.record,
    title: carry(({ name }) => name, ({ title }) => title, () => notes.name.trim().slice(0, BODY_RECORD.title.max)),
    figure: notes.figure,
    age: carry(({ age }) => age, ({ age }) => age, () => plainNumber(notes.age, 'zero too')),
    estimate: notes.skipped !== 'open',
    measures: inOrder(notes.record).flatMap((name) => measureOf(name) ?? []),
  }; // prettier-ignore
}

/** The dimensions in the order of the record; those that it lacks follow. */
const inOrder = (record: StoredBody | undefined): readonly BodyDimension[] => [
  ...new Set([...(record?.measures.map(({ name }) => name) ?? []), ...BODY_DIMENSIONS]),
];

const howOf = ({ measures, takenBy }: BodyNotes, name: BodyDimension) => measures[name]?.how ?? takenBy;

export function fromBodyRecord(given: BodyRecord): BodyNotes {
  const record = storedRecord(BODY_RECORD, given);
  const { title, figure, age, estimate, measures } = record;
  const takenBy = measures.length > 0 && measures.every(({ how }) => how === 'trained') ? 'trained' : 'home';
  const written = measures.map((measure): [BodyDimension, WrittenMeasure] => [
    measure.name,
    {
      ...fromMeasured(measure, quantityOf(measure.name)),
      ...(measure.how === takenBy ? {} : { how: measure.how }),
      ...(measure.takenAt === null ? {} : { on: measure.takenAt }),
    },
  ]);
  return {
    name: title,
    figure,
    age: age === null ? '' : String(age),
    takenBy,
    skipped: estimate ? 'guessed' : 'open',
    measures: Object.fromEntries(written),
    record,
  };
}
