import type { FieldSchema } from '#measure';
import {
  ChoiceField,
  IdField,
  ListField,
  NumberField,
  ObjectField,
  TextField,
  TextListField,
  WholeNumberField,
  YesNoField,
  type FieldWords,
} from '../http/fields.ts';
import { NamesField } from '../http/names-field.ts';
import { DayOrTimeField } from '../measures/day-or-time-field.ts';
import { MeasuredField } from '../measures/measured-field.ts';

export type RecordClass<T = object> = new () => T;

/** The classes of the records within a record: OpenAPI names each by its class. */
export type NestedClasses<S> = {
  readonly [K in keyof S as S[K] extends { kind: 'record' | 'list' | 'either' } ? K : never]: RecordClass;
};

/** A property with the validation of a field of a schema and its part of OpenAPI. `nested` is the class of a record within the record. */
export function recordField(field: FieldSchema, words: FieldWords, nested: RecordClass | undefined): PropertyDecorator {
  switch (field.kind) {
    case 'text':
      return TextField({ ...words, max: field.max });
    case 'choice':
      return ChoiceField(field.of, words);
    case 'number':
      return NumberField({ ...words, min: field.min, max: field.max });
    case 'whole':
      return WholeNumberField({ ...words, min: field.min, max: field.max });
    case 'texts':
      return TextListField({ ...words, max: field.max, longest: field.longest });
    case 'names':
      return NamesField({ ...words, max: field.max, longestName: field.longestName, longest: field.longest });
    case 'yes-no':
      return YesNoField(words);
    case 'day-or-time':
      return DayOrTimeField(words);
    case 'id':
      return IdField(words);
    case 'measured':
      return MeasuredField(field.part, field.as, words);
    case 'list':
      return ListField(() => classOf(nested), { ...words, max: field.max });
    case 'record':
    case 'either':
      return ObjectField(() => classOf(nested), words);
  }
}

function classOf(nested: RecordClass | undefined): RecordClass {
  if (nested === undefined) throw new Error('A record within a record needs a class.');
  return nested;
}
