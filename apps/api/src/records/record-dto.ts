import type { FieldSchema, RecordOf, RecordSchema } from '#measure';
import {
  ChoiceField,
  ListField,
  NumberField,
  ObjectField,
  TextField,
  TextListField,
  WholeNumberField,
  YesNoField,
} from '../http/fields.ts';
import { NamesField } from '../http/names-field.ts';
import { UniqueAmongItems } from '../http/unique-items.ts';
import { MeasuredField } from '../measures/measured-field.ts';
import { DayOrTimeField } from '../measures/day-or-time-field.ts';

type Class<T = object> = new () => T;
type ListSchema = Extract<FieldSchema, { readonly kind: 'list' }>;
type EitherSchema = Extract<FieldSchema, { readonly kind: 'either' }>;

/** The classes of the records within a record: OpenAPI names each by its class. */
type Nested<S> = {
  readonly [K in keyof S as S[K] extends { kind: 'record' | 'list' | 'either' } ? K : never]: Class;
};

/** A class to name or to extend whose fields are those of the schema, each with its validation and its part of OpenAPI. */
export function recordDto<S extends RecordSchema>(
  schema: S,
  nested: Nested<S>,
  distinct: readonly string[] = [],
): Class<RecordOf<S>> {
  class RecordDto {}
  // The fields that tell items apart are compared at the last of them.
  const compared = distinct.at(-1);
  if (compared !== undefined) UniqueAmongItems(...distinct)(RecordDto.prototype, compared);
  for (const [name, field] of Object.entries(schema)) {
    fieldDecorator(field, (nested as Readonly<Record<string, Class>>)[name])(RecordDto.prototype, name);
  }
  return RecordDto as Class<RecordOf<S>>;
}

/** The same for the items of a list. */
export const itemDto = <S extends RecordSchema>(
  { items, distinct }: ListSchema & { readonly items: S },
  nested: Nested<S>,
): Class<RecordOf<S>> => recordDto(items, nested, distinct);

/** The same for one of two records: every field of both, none of them required. */
export function eitherDto<E extends EitherSchema>({
  given,
  missing,
}: E): Class<{
  readonly [K in keyof RecordOf<E['given'] & E['missing']>]?: RecordOf<E['given'] & E['missing']>[K] | null;
}> {
  const optional = Object.entries({ ...given, ...missing }).map(([name, field]) => [
    name,
    { ...field, optional: true },
  ]);
  return recordDto(Object.fromEntries(optional) as RecordSchema, {}) as never;
}

function fieldDecorator(field: FieldSchema, nested: Class | undefined): PropertyDecorator {
  const common = commonOf(field);
  switch (field.kind) {
    case 'text':
      return TextField({ ...common, max: field.max });
    case 'choice':
      return ChoiceField(field.of, common);
    case 'number':
      return NumberField({ ...common, min: field.min, max: field.max });
    case 'whole':
      return WholeNumberField({ ...common, min: field.min, max: field.max });
    case 'texts':
      return TextListField({ ...common, max: field.max, longest: field.longest });
    case 'names':
      return NamesField({ ...common, max: field.max, longestName: field.longestName, longest: field.longest });
    case 'yes-no':
      return YesNoField(common);
    case 'day-or-time':
      return DayOrTimeField(common);
    case 'measured':
      return MeasuredField(field.part, field.as);
    case 'list':
      return ListField(() => classOf(nested), { ...common, max: field.max });
    case 'record':
    case 'either':
      return ObjectField(() => classOf(nested), common);
  }
}

/** What OpenAPI says of any field; nothing where the schema says nothing. */
const commonOf = ({ optional, description, example, default: standard }: FieldSchema) => ({
  ...(optional !== undefined && { optional }),
  ...(description !== undefined && { description }),
  ...(example !== undefined && { example }),
  ...(standard !== undefined && { default: standard }),
});

function classOf(nested: Class | undefined): Class {
  if (nested === undefined) throw new Error('A record within a record needs a class.');
  return nested;
}
