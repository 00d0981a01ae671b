import fc, { type Arbitrary } from 'fast-check';
import {
  QUANTITIES,
  readingOf,
  type FieldSchema,
  type Measured,
  type MeasuredSchema,
  type RecordOf,
  type RecordSchema,
} from '#measure';

type Fields = Readonly<Record<string, unknown>>;
type Size = readonly [smallest: number, largest: number];

/** Which sizes, in mm or g, a record may have in its measured fields: what the libs believe is narrower than what the schema does. */
type Believed = (fields: Fields) => Size | null;

/** Records that a schema allows, as a maker gives them: fields that may be left out are absent, null or given. */
export function anyRecord<S extends RecordSchema>(schema: S, believed: Believed = () => null): Arbitrary<RecordOf<S>> {
  return fieldsOf(schema, believed) as unknown as Arbitrary<RecordOf<S>>;
}

function fieldsOf(schema: RecordSchema, believed: Believed): Arbitrary<Fields> {
  const measured = Object.values(schema).find((field) => field.kind === 'measured');
  const plain = Object.entries(schema).filter(([, field]) => field.kind !== 'measured');
  const fields = fc.record(
    Object.fromEntries(plain.map(([name, field]) => [name, orLeftOut(field, valueOf(field, believed))])),
  );
  const present = fields.map((all) =>
    Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)),
  );
  if (measured === undefined) return present;
  const withU = 'u' in schema;
  return present.chain((all) => sizes(all, measured.as, believed, withU).map((size) => ({ ...all, ...size })));
}

const orLeftOut = ({ optional }: FieldSchema, value: Arbitrary<unknown>): Arbitrary<unknown> =>
  optional === true
    ? fc.oneof({ weight: 1, arbitrary: fc.constantFrom(null, undefined) }, { weight: 3, arbitrary: value })
    : value;

function valueOf(field: FieldSchema, believed: Believed): Arbitrary<unknown> {
  switch (field.kind) {
    case 'text':
      return fc
        .string({ unit: 'grapheme', maxLength: Math.min(field.max, 30) })
        .filter((text) => /^\P{Cc}*$/u.test(text));
    case 'choice':
      return fc.constantFrom(...field.of);
    case 'number':
      return numbers(field.min, field.max);
    case 'whole':
      return fc.integer({ min: field.min, max: field.max });
    case 'yes-no':
      return fc.boolean();
    case 'texts':
      return fc.array(fc.string({ maxLength: field.longest }), { maxLength: 5 });
    case 'names':
      return fc.dictionary(fc.string({ minLength: 1, maxLength: 20 }), fc.string({ maxLength: 20 }), { maxKeys: 5 });
    case 'day-or-time':
      return fc.constantFrom('2026-01-31', '2025-12-01T18:30:00Z', '2024-02-29T06:05:04.321+01:00');
    case 'id':
      return fc.uuid();
    case 'record':
      return fieldsOf(field.fields, believed);
    case 'list': {
      const { distinct = [] } = field;
      const selector = (item: Fields): string => JSON.stringify(distinct.map((name) => item[name]));
      return fc.uniqueArray(fieldsOf(field.items, believed), { maxLength: 12, selector });
    }
    case 'either':
      return fc.oneof(
        ...Object.values(field.given).map((record) => fieldsOf(record, believed)),
        fieldsOf(field.missing, believed),
      );
    case 'measured':
      throw new Error('The fields of a size are made together.');
  }
}

/** Never minus zero: JSON has none. */
const numbers = (min: number, max: number): Arbitrary<number> =>
  fc.oneof(fc.double({ min, max, noNaN: true }), fc.constantFrom(min, max)).map((value) => value + 0);

/** From 0 to 1, evenly. */
const SHARE = fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000);

/** A number with its unit, or a text that names its unit or leaves it to the field. */
function sizes(fields: Fields, as: MeasuredSchema, believed: Believed, withU: boolean): Arbitrary<Measured> {
  const { quantity, limits } = readingOf(fields as Measured, { ...as, orGiven: [] }) ?? as;
  const { units, from } = QUANTITIES[quantity];
  const [min, max] = believed(fields) ?? [limits.min, limits.max];
  const written = fc.tuple(SHARE, fc.constantFrom(...units), fc.constantFrom(...FORMS));
  return fc.tuple(written, fc.option(SHARE)).map(([[share, unit, form], u]) => {
    // Inside the limits, so that rounding to a written number stays there.
    const inUnit = (min + (max - min) * (0.05 + 0.9 * share)) / from(1, unit);
    const size = form(inUnit, unit);
    const uncertainty = u === null || !withU ? {} : { u: Math.abs(inUnit) * (0.01 + 0.1 * u) };
    return { ...size, ...uncertainty };
  });
}

const SHORT: Readonly<Record<string, string>> = { '[in_i]': 'in', '[lb_av]': 'lb' };
const decimals = (value: number): string => value.toFixed(2);
const FORMS: readonly ((value: number, unit: string) => Measured)[] = [
  (value, unit) => ({ value: value + 0, unit }),
  (value, unit) => ({ value: Math.round(value * 100) / 100 + 0, unit, text: null }),
  (value, unit) => ({ text: decimals(value), unit }),
  (value, unit) => ({ text: ` ${decimals(value).replace('.', ',')} ${SHORT[unit] ?? unit}` }),
  (value, unit) => ({ text: `${decimals(value)} ${SHORT[unit] ?? unit}`, unit, value: null }),
];
