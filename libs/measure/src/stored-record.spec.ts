import { expect, expectTypeOf, it } from 'vitest';
import { chosenFields, measuredFields } from './measured-fields.ts';
import type { RecordOf, RecordSchema, StoredRecord } from './record-schema.ts';
import { storedRecord } from './stored-record.ts';
import { TAKEN_FIELDS } from './taken-fields.ts';

const LIMITS = { min: 1, max: 3000, words: 'from 1 mm to 3 m' };
const SCARF = {
  title: { kind: 'text', max: 120, optional: true },
  stitch: { kind: 'choice', of: ['garter', 'rib'] },
  fringe: { kind: 'yes-no', optional: true, default: false },
  sides: {
    kind: 'list',
    max: 4,
    items: {
      name: { kind: 'choice', of: ['long', 'short'] },
      ...measuredFields({ quantity: 'length', limits: LIMITS }),
      ...TAKEN_FIELDS,
      from: {
        kind: 'choice',
        of: ['edge', 'middle'],
        optional: true,
        default: 'edge',
        onlyWhere: { field: 'name', is: 'long' },
      },
    },
  },
  seen: {
    kind: 'record',
    fields: { indoors: { kind: 'whole', min: 0, max: 9, optional: true } },
    sparse: true,
    optional: true,
  },
  ease: {
    kind: 'either',
    given: { place: { place: { kind: 'number', min: 0, max: 1 } } },
    missing: chosenFields({ quantity: 'difference', limits: LIMITS, orGiven: ['place'] }),
    optional: true,
  },
} as const satisfies RecordSchema;
type Scarf = RecordOf<typeof SCARF>;

it('fills in what was left out: its default, an empty text, or null', () => {
  const scarf: Scarf = {
    stitch: 'rib',
    sides: [
      { name: 'long', text: '1.5 m', takenAt: '2026-01-31' },
      { name: 'short', value: 30, unit: 'cm', from: 'middle' },
    ],
    seen: { indoors: null },
  };
  const stored = storedRecord(SCARF, scarf);
  expect(stored).toEqual({
    title: '',
    stitch: 'rib',
    fringe: false,
    sides: [
      {
        name: 'long',
        value: null,
        unit: null,
        text: '1.5 m',
        u: null,
        how: 'home',
        takenAt: '2026-01-31',
        from: 'edge',
      },
      { name: 'short', value: 30, unit: 'cm', text: null, u: null, how: 'home', takenAt: null, from: null },
    ],
    seen: {},
    ease: null,
  });
  expect(storedRecord(SCARF, stored)).toEqual(stored);
});

it('stores one of several records, by the field that tells them apart', () => {
  const withEase = (ease: NonNullable<Scarf['ease']>) => storedRecord(SCARF, { stitch: 'rib', sides: [], ease }).ease;
  expect(withEase({ place: 0.2, value: null })).toEqual({ place: 0.2 });
  expect(withEase({ value: 3, unit: 'cm' })).toEqual({ value: 3, unit: 'cm', text: null });
});

it('has types that say the same', () => {
  expectTypeOf<Scarf['stitch']>().toEqualTypeOf<'garter' | 'rib'>();
  expectTypeOf<Scarf['fringe']>().toEqualTypeOf<boolean | null | undefined>();
  expectTypeOf<StoredRecord<typeof SCARF>['fringe']>().toEqualTypeOf<boolean>();
  expectTypeOf<StoredRecord<typeof SCARF>['sides'][number]['u']>().toEqualTypeOf<number | null>();
  expectTypeOf<Scarf['sides'][number]['unit']>().toEqualTypeOf<'mm' | 'cm' | '[in_i]' | 'in' | null | undefined>();
});

it('keeps lists, names and records as they were given, and says of each what it is without', () => {
  const TOOL = {
    tags: { kind: 'texts', max: 3, longest: 20, optional: true },
    names: { kind: 'names', max: 3, longestName: 20, longest: 20, optional: true },
    size: { kind: 'record', fields: { rows: { kind: 'whole', min: 0, max: 9, optional: true } }, optional: true },
    seen: {
      kind: 'record',
      fields: {
        here: { kind: 'whole', min: 0, max: 9, optional: true },
        there: { kind: 'text', max: 9, optional: true },
      },
      sparse: true,
      optional: true,
    },
    count: { kind: 'whole', min: 0, max: 9, optional: true, default: 2 },
    colour: { kind: 'choice', of: ['red', 'blue'], optional: true },
    parts: { kind: 'list', items: { rows: { kind: 'whole', min: 0, max: 9 } }, max: 2, optional: true },
  } as const satisfies RecordSchema;
  const nothing = { tags: [], names: {}, size: null, seen: {}, count: 2, colour: null, parts: [] };
  expect(storedRecord(TOOL, {})).toEqual(nothing);
  const whole = {
    tags: ['a', 'b'],
    names: { back: 'dos' },
    size: { rows: 4 },
    seen: { here: 1 },
    count: 0,
    colour: 'red',
    parts: [{ rows: 1 }],
  } as const;
  expect(
    storedRecord(TOOL, { ...whole, tags: ['a', 'b'], parts: [{ rows: 1 }], seen: { here: 1, there: null } }),
  ).toEqual(whole);
  expect(storedRecord(TOOL, { size: {} }).size).toEqual({ rows: null });
  expect(() => storedRecord({ odd: { kind: 'odd' } } as unknown as RecordSchema, {})).toThrow('Not one of the known');
});
