import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsOptional, ValidateBy, type ValidationArguments } from 'class-validator';

const MOST = 200;
const LONGEST_OURS = 80;
const LONGEST_THEIRS = 300;

/** A map from our names to a planner's; whether each can be used is another question. */
export function NamesField(): PropertyDecorator {
  return applyDecorators(
    ApiProperty({
      type: 'object',
      additionalProperties: { type: 'string', maxLength: LONGEST_THEIRS },
      maxProperties: MOST,
      selfRequired: false,
      nullable: true,
      description:
        'Our name to the planner’s: a JSON Pointer (flat) or a column (csv). Empty sends everything under our names.',
      example: { 'assembled/chest-width': '/sweater/width', 'sleeve/sleeve-length/as-made': '/sweater/sleeve' },
    }),
    IsOptional(),
    ValidateBy({
      name: 'names',
      validator: {
        validate: (value) => faultOfNames(value) === null,
        defaultMessage: (args?: ValidationArguments) => faultOfNames(args?.value) ?? '',
      },
    }),
  );
}

function faultOfNames(value: unknown): string | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return 'must be an object: { "our name": "their name" }';
  const entries = Object.entries(value as Record<string, unknown>);
  if (entries.length > MOST) return `must not have more than ${MOST} names`;
  const wrong = entries.find(([ours, theirs]) => ours.length > LONGEST_OURS || !isLine(theirs, LONGEST_THEIRS));
  return wrong
    ? `“${wrong[0].slice(0, LONGEST_OURS)}” must lead to a text of at most ${LONGEST_THEIRS} characters, in one line`
    : null;
}

const isLine = (value: unknown, longest: number): boolean =>
  typeof value === 'string' && value.length <= longest && /^\P{Cc}*$/u.test(value);
