import type { FieldSchema, RecordSchema, StoredRecord } from '#measure';
import { recordField, type NestedClasses, type RecordClass } from './record-field.ts';

type SparseRecord<S> = { readonly [K in keyof StoredRecord<S>]?: NonNullable<StoredRecord<S>[K]> };

/** A class for OpenAPI alone: a record as it is kept, in which every field is there, those that were left out with their default or null. */
export function keptRecordDto<S extends RecordSchema>(
  schema: S,
  nested: NestedClasses<S>,
): RecordClass<StoredRecord<S>> {
  return answerDto(schema, nested, keptWords) as RecordClass<StoredRecord<S>>;
}

/** The same of a record of which only what was given is kept. */
export const keptSparseDto = <S extends RecordSchema>(schema: S): RecordClass<SparseRecord<S>> =>
  answerDto(schema, {}, sparseWords) as RecordClass<SparseRecord<S>>;

function answerDto(schema: RecordSchema, nested: object, words: (field: FieldSchema) => object): RecordClass {
  class KeptRecordDto {}
  for (const [name, field] of Object.entries(schema)) {
    const within = (nested as Readonly<Record<string, RecordClass>>)[name];
    recordField(field, words(field), within)(KeptRecordDto.prototype, name);
  }
  return KeptRecordDto;
}

const wordsOf = ({ description, example }: FieldSchema) => ({
  ...(description !== undefined && { description }),
  ...(example !== undefined && { example }),
});

const keptWords = (field: FieldSchema) => ({ ...wordsOf(field), nullable: isNullWhereLeftOut(field) });
const sparseWords = (field: FieldSchema) => ({ ...wordsOf(field), optional: true, nullable: false });

/** As `storedRecord` keeps it. */
function isNullWhereLeftOut(field: FieldSchema): boolean {
  switch (field.kind) {
    case 'text':
    case 'texts':
    case 'names':
    case 'list':
    case 'either':
      return false;
    case 'choice':
      return field.onlyWhere !== undefined || isOptionalWithoutDefault(field);
    case 'record':
      return field.sparse !== true && isOptionalWithoutDefault(field);
    case 'number':
    case 'whole':
    case 'yes-no':
    case 'day-or-time':
    case 'id':
    case 'measured':
      return isOptionalWithoutDefault(field);
  }
}

const isOptionalWithoutDefault = ({ optional, default: standard }: FieldSchema): boolean =>
  optional === true && standard === undefined;
