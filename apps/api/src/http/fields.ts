import { applyDecorators } from '@nestjs/common';
import { ApiProperty, type ApiPropertyOptions } from '@nestjs/swagger';
import { Type } from 'class-transformer';
import {
  ArrayMaxSize,
  IsArray,
  IsBoolean,
  IsDefined,
  IsIn,
  IsInt,
  IsNumber,
  IsObject,
  IsOptional,
  IsString,
  Matches,
  Max,
  MaxLength,
  Min,
  ValidateNested,
} from 'class-validator';
import { ID_PATTERN } from './id.ts';
import { EachIsObject } from './unique-items.ts';

/** Without control characters (Cc); written so that every engine reads it, with Unicode switched on or not. */
const ONE_LINE = /^[^\x00-\x1f\x7f-\x9f]*$/;

type Class = new () => object;

/** What may be said of any field. */
export interface FieldWords {
  /** Absent and null both mean "not given". */
  readonly optional?: boolean;
  /** It is always there, and may be null: a field of an answer. */
  readonly nullable?: boolean;
  readonly description?: string;
  readonly example?: unknown;
  readonly default?: unknown;
}

/** A field, described once: what OpenAPI says of it and what is refused. The first check that fails is the one that speaks. */
function field(
  { optional = false, nullable = optional, ...words }: FieldWords,
  schema: object,
  checks: PropertyDecorator[],
): PropertyDecorator {
  const api = { ...words, ...schema, required: !optional, ...(nullable && { nullable }) } as ApiPropertyOptions;
  return applyDecorators(ApiProperty(api), nullable ? IsOptional() : IsDefined({ message: 'is missing' }), ...checks);
}

/** One line of text without control characters. */
export function TextField({ max, ...words }: FieldWords & { readonly max: number }): PropertyDecorator {
  return field(words, { type: 'string', maxLength: max, pattern: ONE_LINE.source }, [
    IsString({ message: 'must be a text' }),
    MaxLength(max, { message: `must not be longer than ${max} characters` }),
    Matches(ONE_LINE, { message: 'must be one line, without control characters' }),
  ]);
}

/** A list of short texts, at most `max`. */
export function TextListField({
  max,
  longest,
  ...words
}: FieldWords & { readonly max: number; readonly longest: number }): PropertyDecorator {
  const schema = { type: 'array', items: { type: 'string', maxLength: longest }, maxItems: max };
  return field(words, schema, [
    IsArray({ message: 'must be a list: [ … ]' }),
    ArrayMaxSize(max, { message: `must not have more than ${max} items` }),
    IsString({ each: true, message: 'every item must be a text' }),
    MaxLength(longest, { each: true, message: `no item may be longer than ${longest} characters` }),
  ]);
}

/** The id of something kept. */
export function IdField(words: FieldWords = {}): PropertyDecorator {
  return field(words, { type: 'string', format: 'uuid' }, [
    IsString({ message: 'must be a text: an id' }),
    Matches(ID_PATTERN, { message: 'must be an id: a UUID in lower case' }),
  ]);
}

/** One of a closed list of words. */
export function ChoiceField(values: readonly string[], words: FieldWords = {}): PropertyDecorator {
  return field(words, { type: 'string', enum: [...values] }, [
    IsIn(values, { message: `must be one of ${values.join(', ')}` }),
  ]);
}

/** A finite number from `min` to `max`, both included. */
export function NumberField({
  min,
  max,
  ...words
}: FieldWords & { readonly min: number; readonly max: number }): PropertyDecorator {
  const wrong = { message: `must be a number from ${min} to ${max}` };
  return field(words, { type: 'number', minimum: min, maximum: max }, [
    IsNumber({ allowNaN: false, allowInfinity: false }, wrong),
    Min(min, wrong),
    Max(max, wrong),
  ]);
}

/** A whole number from `min` to `max`, both included. */
export function WholeNumberField({
  min,
  max,
  ...words
}: FieldWords & { readonly min: number; readonly max: number }): PropertyDecorator {
  const wrong = { message: `must be a whole number from ${min} to ${max}` };
  return field(words, { type: 'integer', minimum: min, maximum: max }, [
    IsInt(wrong),
    Min(min, wrong),
    Max(max, wrong),
  ]);
}

export function YesNoField(words: FieldWords = {}): PropertyDecorator {
  return field(words, { type: 'boolean' }, [IsBoolean({ message: 'must be true or false' })]);
}

/** An object with fields of its own. */
export function ObjectField(type: () => Class, words: FieldWords = {}): PropertyDecorator {
  return applyDecorators(
    field(words, { type: () => type() }, [IsObject({ message: 'must be an object: { … }' }), ValidateNested()]),
    Type(type),
  );
}

/** A list of objects, at most `max`. */
export function ListField(
  type: () => Class,
  { max, ...words }: FieldWords & { readonly max: number },
): PropertyDecorator {
  const schema = { type: () => type(), isArray: true, maxItems: max };
  return applyDecorators(
    field(words, schema, [
      IsArray({ message: 'must be a list: [ … ]' }),
      ArrayMaxSize(max, { message: `must not have more than ${max} items` }),
      EachIsObject(),
      ValidateNested({ each: true }),
    ]),
    Type(type),
  );
}
