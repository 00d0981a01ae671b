import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsOptional, ValidateBy, type ValidationArguments } from 'class-validator';

/** How many names, and how long each and its text may be. */
interface Limits {
  readonly max: number;
  readonly longestName: number;
  readonly longest: number;
}

/** A map from our names to a planner's, left out or null for none; whether each can be used is another question. */
export function NamesField({
  description,
  example,
  ...limits
}: Limits & { readonly description?: string; readonly example?: unknown }): PropertyDecorator {
  return applyDecorators(
    ApiProperty({
      type: 'object',
      additionalProperties: { type: 'string', maxLength: limits.longest },
      maxProperties: limits.max,
      selfRequired: false,
      nullable: true,
      ...(description !== undefined && { description }),
      ...(example !== undefined && { example }),
    }),
    IsOptional(),
    ValidateBy({
      name: 'names',
      validator: {
        validate: (value) => faultOfNames(value, limits) === null,
        defaultMessage: (args?: ValidationArguments) => faultOfNames(args?.value, limits) ?? '',
      },
    }),
  );
}

function faultOfNames(value: unknown, { max, longestName, longest }: Limits): string | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return 'must be an object: { "our name": "their name" }';
  const entries = Object.entries(value as Record<string, unknown>);
  if (entries.length > max) return `must not have more than ${max} names`;
  const wrong = entries.find(([ours, theirs]) => ours.length > longestName || !isLine(theirs, longest));
  return wrong
    ? `“${wrong[0].slice(0, longestName)}” must lead to a text of at most ${longest} characters, in one line`
    : null;
}

const isLine = (value: unknown, longest: number): boolean =>
  typeof value === 'string' && value.length <= longest && /^\P{Cc}*$/u.test(value);
