import type { FieldSchema, FieldValue, RecordOf, RecordSchema } from '#measure';
import { UniqueAmongItems } from '../http/unique-items.ts';
import { recordField, type NestedClasses, type RecordClass } from './record-field.ts';

type ListSchema = Extract<FieldSchema, { readonly kind: 'list' }>;
type EitherSchema = Extract<FieldSchema, { readonly kind: 'either' }>;

/** A class to name or to extend whose fields are those of the schema, each with its validation and its part of OpenAPI. */
export function recordDto<S extends RecordSchema>(
  schema: S,
  nested: NestedClasses<S>,
  distinct: readonly string[] = [],
): RecordClass<RecordOf<S>> {
  class RecordDto {}
  // The fields that tell items apart are compared at the last of them.
  const compared = distinct.at(-1);
  if (compared !== undefined) UniqueAmongItems(...distinct)(RecordDto.prototype, compared);
  for (const [name, field] of Object.entries(schema)) {
    recordField(
      field,
      wordsOf(field),
      (nested as Readonly<Record<string, RecordClass>>)[name],
    )(RecordDto.prototype, name);
  }
  return RecordDto as RecordClass<RecordOf<S>>;
}

/** The same for the items of a list. */
export const itemDto = <S extends RecordSchema>(
  { items, distinct }: ListSchema & { readonly items: S },
  nested: NestedClasses<S>,
): RecordClass<RecordOf<S>> => recordDto(items, nested, distinct);

/** The same for one of several records: every field of all of them, none required. */
export function eitherDto<E extends EitherSchema>(
  { given, missing }: E,
  nested: Readonly<Record<string, RecordClass>>,
): RecordClass<FieldValue<E>> {
  const fields: RecordSchema = Object.assign({}, ...Object.values(given), missing);
  const optional = Object.entries(fields).map(([name, field]) => [name, { ...field, optional: true }]);
  return recordDto(Object.fromEntries(optional) as RecordSchema, nested as never) as RecordClass<FieldValue<E>>;
}

/** What OpenAPI says of any field; nothing where the schema says nothing. */
const wordsOf = ({ optional, description, example, default: standard }: FieldSchema) => ({
  ...(optional !== undefined && { optional }),
  ...(description !== undefined && { description }),
  ...(example !== undefined && { example }),
  ...(standard !== undefined && { default: standard }),
});
