import fc, { type Arbitrary } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BODY_RECORD, type StoredBody } from '#body';
import { FABRIC_RECORD, type StoredFabric } from '#fabric';
import { DESIGN_RECORD, type StoredDesign } from '#fit';
import { GARMENT_RECORD, type StoredGarment } from '#garment';
import { storedRecord, type RecordOf, type RecordSchema, type StoredRecord } from '#measure';
import type { BodyNotes, DesignNotes, GarmentNotes, YarnNotes } from '../../apps/web/src/notebook/notebook.ts';
import { fromBodyRecord } from '../../apps/web/src/reading/body-record.ts';
import { fromDesignRecord, toDesignRecord } from '../../apps/web/src/reading/design-record.ts';
import { fromGarmentRecord } from '../../apps/web/src/reading/garment-record.ts';
import { fromYarnRecord } from '../../apps/web/src/reading/yarn-record.ts';
import { TO_RECORD } from '../../apps/web/src/records/to-record.ts';
import { fromPlanner, OURS, toPlannerDto } from '../../apps/web/src/send/planner-notes.ts';
import { anyBody, anyDesign, anyFabric, anyGarment } from '../support/any-kept-record.ts';

/** One way of writing on the page, and the fields of the record that it may change. */
interface Edit<N> {
  readonly what: string;
  readonly write: (notes: N) => N;
  readonly changes: readonly string[];
}

interface Kind<N> {
  readonly schema: RecordSchema;
  readonly any: Arbitrary<object>;
  readonly from: (record: never) => N;
  readonly to: (notes: N) => object;
  readonly edits: readonly Edit<N>[];
}

const cm = (text: string) => ({ text, tape: 'cm' as const });

const body: Kind<BodyNotes> = {
  schema: BODY_RECORD,
  any: anyBody,
  from: fromBodyRecord as never,
  to: TO_RECORD.bodies,
  edits: [
    { what: 'its name', write: (notes) => ({ ...notes, name: `${notes.name}!` }), changes: ['title'] },
    { what: 'its age', write: (notes) => ({ ...notes, age: '' }), changes: ['age'] },
    { what: 'what is skipped', write: (notes) => ({ ...notes, skipped: 'open' }), changes: ['estimate'] },
    {
      what: 'one measure',
      write: (notes) => ({
        ...notes,
        measures: { ...notes.measures, 'hand-girth': { ...cm('18'), on: '2026-02-03' } },
      }),
      changes: ['measures/hand-girth'],
    },
  ],
};

const garment: Kind<GarmentNotes> = {
  schema: GARMENT_RECORD,
  any: anyGarment,
  from: fromGarmentRecord as never,
  to: TO_RECORD.garments,
  edits: [
    { what: 'its name', write: (notes) => ({ ...notes, name: `${notes.name}!` }), changes: ['title'] },
    { what: 'its thickness', write: (notes) => ({ ...notes, thickness: cm('4') }), changes: ['thickness'] },
    { what: 'the layer beneath', write: (notes) => ({ ...notes, layer: null }), changes: ['layer'] },
    { what: 'how the chest wears', write: (notes) => ({ ...notes, wears: { chest: 'close' } }), changes: ['wears'] },
    {
      what: 'one measure',
      write: (notes) => ({ ...notes, measures: { ...notes.measures, 'chest-width': cm('51') } }),
      changes: ['measures/chest-width'],
    },
  ],
};

const fabric: Kind<YarnNotes> = {
  schema: FABRIC_RECORD,
  any: anyFabric,
  from: fromYarnRecord as never,
  to: TO_RECORD.yarns,
  edits: [
    { what: 'its name', write: (notes) => ({ ...notes, name: `${notes.name}!` }), changes: ['title'] },
    { what: 'its thickness', write: (notes) => ({ ...notes, fourLayers: cm('12') }), changes: ['thickness'] },
    {
      what: 'what washing did',
      write: (notes) => ({ ...notes, washedAcross: { before: cm('10'), after: cm('10.4') } }),
      changes: ['growth'],
    },
    {
      what: 'how far the rib pulls',
      write: (notes) => ({ ...notes, pulledRib: { before: cm('10'), after: cm('17') } }),
      changes: ['ribStretch'],
    },
  ],
};

const design: Kind<DesignNotes> = {
  schema: DESIGN_RECORD,
  any: anyDesign,
  from: ((record: StoredDesign) => fromDesignRecord(record, 'A sheet', 'in')) as never,
  to: toDesignRecord,
  edits: [
    { what: 'its title', write: (notes) => ({ ...notes, title: 'Another' }), changes: [] },
    { what: 'its hem', write: (notes) => ({ ...notes, hem: 'tapered' }), changes: ['hem'] },
    { what: 'its ease', write: (notes) => ({ ...notes, ease: 'loose', place: 0.25 }), changes: ['ease'] },
    {
      what: 'one length',
      write: (notes) => ({ ...notes, lengths: { ...notes.lengths, rib: cm('6') } }),
      changes: ['rib'],
    },
  ],
};

/** As it comes and goes over HTTP. */
const overHttp = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** A stored record, one entry a field and one a measure. */
function entries(record: Readonly<Record<string, unknown>>): Map<string, unknown> {
  const { measures = [], ...rest } = record as { readonly measures?: readonly { readonly name: string }[] };
  return new Map<string, unknown>([
    ...Object.entries(rest),
    ...measures.map((measure): [string, unknown] => [`measures/${measure.name}`, measure]),
  ]);
}

describe.each<[string, Kind<never>]>([
  ['a body', body as never],
  ['a garment', garment as never],
  ['a fabric', fabric as never],
  ['a design', design as never],
])('the page, with %s from the store', (_, { schema, any, from, to, edits }) => {
  const stored = any.map((record) => overHttp(storedRecord(schema, record as RecordOf<RecordSchema>)));
  const writtenBack = (notes: never): StoredRecord<RecordSchema> =>
    storedRecord(schema, overHttp(to(notes)) as RecordOf<RecordSchema>);

  it('writes back what it read', () => {
    fc.assert(
      fc.property(stored, (record) => {
        expect(writtenBack(overHttp(from(record as never)))).toEqual(record);
      }),
      { numRuns: 500 },
    );
  });

  it.each(edits)('changes nothing but $what where she writes that', ({ write, changes }) => {
    fc.assert(
      fc.property(stored, (record) => {
        const [before, after] = [entries(record), entries(writtenBack(write(from(record as never))))];
        for (const changed of changes) [before, after].forEach((fields) => fields.delete(changed));
        expect(after).toEqual(before);
      }),
      { numRuns: 200 },
    );
  });
});

describe('what the page has no field for', () => {
  const jacket: StoredGarment = storedRecord(GARMENT_RECORD, {
    title: 'The thick one',
    construction: 'raglan',
    measures: [
      { name: 'chest-width', value: 52, unit: 'cm', u: 0.4, how: 'trained', takenAt: '2026-01-31' },
      { name: 'sleeve-length', text: '19 1/4', unit: '[in_i]', u: 0.25, from: 'centre-back' },
    ],
    thickness: { value: 6, unit: 'mm', u: 0.3 },
    layer: { thickness: { value: 2, unit: 'mm', u: 0.2 }, sleeves: 'long' },
  });
  const read = fromGarmentRecord(jacket);
  const back = (notes: GarmentNotes) => storedRecord(GARMENT_RECORD, TO_RECORD.garments(notes));

  it('is shown as far as it can be', () => {
    expect(read.thickness).toEqual({ text: '6', tape: 'cm' });
    expect(read.measures['chest-width']).toEqual({ text: '52', tape: 'cm' });
  });

  it('stays beside a field that she changes', () => {
    const { measures, ...rest } = back({ ...read, thickness: { text: '5', tape: 'cm' } });
    expect(measures).toEqual(jacket.measures);
    expect(rest.thickness).toEqual({ value: null, unit: 'mm', text: '5', u: null });
    expect(rest.layer).toEqual(jacket.layer);
  });

  it('stays with a sleeve of which she changes only where it was measured from', () => {
    const { measures } = back({ ...read, sleeveFrom: 'seam' });
    expect(measures[1]).toEqual({ ...jacket.measures[1], from: 'seam' });
  });

  it('goes with a value that she measures anew', () => {
    const { measures } = back({ ...read, measures: { ...read.measures, 'chest-width': cm('53') } });
    expect(measures[0]).toMatchObject({ text: '53', unit: 'cm', value: null, u: null, how: 'home', takenAt: null });
  });

  it('stays with a body measure of which she changes only by whom it was taken', () => {
    const record: StoredBody = storedRecord(BODY_RECORD, {
      measures: [{ name: 'chest-girth', value: 940, unit: 'mm', u: 5, how: 'home', takenAt: '2026-01-31' }],
    });
    const written = storedRecord(BODY_RECORD, TO_RECORD.bodies({ ...fromBodyRecord(record), takenBy: 'trained' }));
    expect(written.measures).toEqual([{ ...record.measures[0], how: 'trained' }]);
  });

  it('stays with a yarn: its stitch, its weight and the unit of its thickness', () => {
    const record: StoredFabric = storedRecord(FABRIC_RECORD, {
      craft: 'knit',
      stitch: 'stockinette',
      thickness: { text: '1/8 in', u: 0.01 },
      gramsPerSquareMetre: 410,
    });
    const notes = fromYarnRecord(record);
    expect(notes.fourLayers).toEqual({ text: '12.7', tape: 'cm' });
    expect(storedRecord(FABRIC_RECORD, TO_RECORD.yarns({ ...notes, name: 'Blue' }))).toEqual({
      ...record,
      title: 'Blue',
    });
  });

  it('is no bare number of another unit', () => {
    const record = storedRecord(BODY_RECORD, { measures: [{ name: 'stature', text: '1680', unit: 'mm' }] });
    expect(fromBodyRecord(record).measures.stature).toEqual({ text: '1680 mm', tape: 'cm' });
  });
});

describe('the page, with a planner from the store', () => {
  const names = fc.dictionary(fc.constantFrom(...OURS), fc.string({ minLength: 1, maxLength: 12 }), { maxKeys: 5 });
  const stored = fc.record({
    title: fc.string({ maxLength: 20 }),
    address: fc.option(fc.webUrl()),
    takes: fc
      .record({
        unit: fc.constantFrom('mm' as const, 'cm' as const, 'in' as const),
        format: fc.constantFrom('flat' as const, 'csv' as const, 'sheet' as const),
        roundingStep: fc.option(fc.double({ min: 0.01, max: 3, noNaN: true })),
        names,
        required: fc.uniqueArray(fc.constantFrom(...OURS), { maxLength: 4 }),
      })
      .map((takes) => (takes.format === 'sheet' ? { ...takes, names: {}, roundingStep: null } : takes)),
  });

  it('writes back what it read', () => {
    fc.assert(
      fc.property(stored, (planner) => {
        expect(toPlannerDto(overHttp(fromPlanner(planner)))).toEqual(overHttp(planner));
      }),
      { numRuns: 500 },
    );
  });

  it('changes nothing but its address where she writes that', () => {
    fc.assert(
      fc.property(stored, (planner) => {
        const address = 'https://planner.example/take';
        expect(toPlannerDto({ ...fromPlanner(planner), address })).toEqual({ ...planner, address });
      }),
    );
  });

  it('names what is written anew, and requires no more than that', () => {
    const notes = fromPlanner({ title: 'Rows', takes: { required: ['assembled/chest-width'] } });
    const named = [{ ours: 'sleeve/sleeve-length', theirs: ' arm ', required: true }];
    expect(toPlannerDto({ ...notes, names: named }).takes).toMatchObject({
      names: { 'sleeve/sleeve-length': 'arm' },
      required: ['sleeve/sleeve-length'],
    });
  });
});
