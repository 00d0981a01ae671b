import { applyDecorators } from '@nestjs/common';
import { ApiProperty, type ApiPropertyOptions } from '@nestjs/swagger';
import { ValidateBy, type ValidationArguments } from 'class-validator';
import { detailOf } from '../http/api-error.ts';
import type { FieldWords } from '../http/fields.ts';
import { DomainError, readingOf, readMeasured, unitsOf, type Measured, type MeasuredSchema } from '#measure';

const LONGEST_TEXT = 40;

const PARTS = {
  value: { type: 'number', description: 'A number in `unit`.' },
  unit: {
    type: 'string',
    description: 'UCUM: mm, cm, [in_i]; `in` is understood. Beside a text: the unit of a number that names none.',
  },
  text: {
    type: 'string',
    maxLength: LONGEST_TEXT,
    description: 'Instead of a number, as typed: `17 1/2 in`, `44,5 cm`.',
    example: '17 1/2 in',
  },
  u: { type: 'number', minimum: 0, description: 'Standard uncertainty, in the same unit, where it is known.' },
} as const;

type Part = keyof typeof PARTS;

/**
 * One of the four fields of something measured. Each is optional by itself; together they must be readable as one size, and
 * the field that is at fault says so.
 */
export function MeasuredField(part: Part, as: MeasuredSchema, { optional = false }: FieldWords): PropertyDecorator {
  const units = unitsOf(as);
  const fault = (args?: ValidationArguments): string | null => {
    const measured = (args?.object ?? {}) as Measured;
    const own = FAULTS[part](measured[part], units);
    if (own !== null) return own;
    if (Object.entries(FAULTS).some(([name, faultOf]) => faultOf(measured[name as Part], units) !== null)) return null;
    return faultOfWhole(measured, readingOf(measured, as), part);
  };
  const api = { ...PARTS[part], ...(part === 'unit' && { enum: [...units] }), required: !optional, nullable: true };
  return applyDecorators(
    ApiProperty(api as ApiPropertyOptions),
    ValidateBy({
      name: 'measured',
      validator: {
        validate: (_: unknown, args?) => fault(args) === null,
        defaultMessage: (args?) => fault(args) ?? '',
      },
    }),
  );
}

const FAULTS: Readonly<Record<Part, (value: unknown, units: readonly string[]) => string | null>> = {
  value: (value) => (value == null || Number.isFinite(value) ? null : 'must be a number'),
  unit: (unit, units) => (unit == null || units.includes(unit as string) ? null : `must be one of ${units.join(', ')}`),
  text: (text) =>
    text == null || (typeof text === 'string' && text.length <= LONGEST_TEXT)
      ? null
      : `must be a text of at most ${LONGEST_TEXT} characters`,
  u: (u) => (u == null || (Number.isFinite(u) && (u as number) >= 0) ? null : 'must be a number, 0 or more'),
};

function faultOfWhole(measured: Measured, reading: ReturnType<typeof readingOf>, part: Part): string | null {
  if (reading === null) return null;
  const { quantity, limits } = reading;
  try {
    const { size } = readMeasured(measured, quantity);
    const speaks = measured.text == null ? 'value' : 'text';
    return part !== speaks || (size >= limits.min && size <= limits.max) ? null : `must be ${limits.words}`;
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return error.pointer === `/${part}` ? detailOf(error) : null;
  }
}
