import { assertNever } from './assert-never.ts';
import type { FieldSchema, RecordOf, RecordSchema, StoredRecord } from './record-schema.ts';

type Fields = Readonly<Record<string, unknown>>;

/** A record as it is stored: every field of the schema, with its default or null where it was left out. */
export function storedRecord<S extends RecordSchema>(schema: S, record: RecordOf<S>): StoredRecord<S> {
  return stored(schema, record as Fields) as StoredRecord<S>;
}

function stored(schema: RecordSchema, record: Fields): Fields {
  return Object.fromEntries(
    Object.entries(schema).map(([name, field]) => [name, storedValue(field, record[name], record)]),
  );
}

function storedValue(field: FieldSchema, value: unknown, record: Fields): unknown {
  switch (field.kind) {
    case 'text':
      return value ?? '';
    case 'texts':
      return value ?? [];
    case 'names':
      return value ?? {};
    case 'choice':
      return field.onlyWhere !== undefined && record[field.onlyWhere.field] !== field.onlyWhere.is
        ? null
        : (value ?? field.default ?? null);
    case 'record':
      if (field.sparse) return withoutNulls((value ?? {}) as Fields);
      return value == null ? null : stored(field.fields, value as Fields);
    case 'list':
      return ((value ?? []) as readonly Fields[]).map((item) => stored(field.items, item));
    case 'either':
      return value == null ? null : storedEither(field, value as Fields);
    case 'number':
    case 'whole':
    case 'yes-no':
    case 'day-or-time':
    case 'id':
    case 'measured':
      return value ?? field.default ?? null;
    default:
      return assertNever(field);
  }
}

function storedEither(
  { given, missing }: { readonly given: Readonly<Record<string, RecordSchema>>; readonly missing: RecordSchema },
  value: Fields,
): Fields {
  const by = Object.keys(given).find((field) => value[field] != null);
  return stored(by === undefined ? missing : given[by]!, value);
}

const withoutNulls = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value != null));
