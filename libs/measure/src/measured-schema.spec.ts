import { describe, expect, it } from 'vitest';
import type { Measured } from './measured.ts';
import { readingOf, unitsOf, type MeasuredSchema } from './measured-schema.ts';

const LENGTHS = { quantity: 'length', limits: { min: 1, max: 5000, words: 'from 1 mm to 5 m' } } as const;
const MASSES = { quantity: 'mass', limits: { min: 500, max: 500_000, words: 'from 0.5 to 500 kg' } } as const;
const BODY: MeasuredSchema = { ...LENGTHS, instead: { field: 'name', is: 'weight', ...MASSES } };
const EASE: MeasuredSchema = { ...LENGTHS, orGiven: ['category'] };

describe('readingOf', () => {
  it('is that of the schema, or the other one where a field has its value', () => {
    expect(readingOf({ value: 5 }, LENGTHS)).toEqual(LENGTHS);
    expect(readingOf({ name: 'chest-girth', value: 5 } as Measured, BODY)).toEqual(LENGTHS);
    expect(readingOf({ name: 'weight', value: 5 } as Measured, BODY)).toMatchObject(MASSES);
    expect(readingOf({ name: 'weight' } as Measured, LENGTHS)).toEqual(LENGTHS);
  });

  it('is none where something is given in place of a size', () => {
    expect(readingOf({ category: 'classic' } as Measured, EASE)).toBeNull();
    expect(readingOf({ category: 'classic', value: null, text: null } as Measured, EASE)).toBeNull();
    expect(readingOf({ category: 'classic', value: 5 } as Measured, EASE)).toEqual(LENGTHS);
    expect(readingOf({ category: 'classic', text: '5 cm' } as Measured, EASE)).toEqual(LENGTHS);
    expect(readingOf({ category: null } as Measured, EASE)).toEqual(LENGTHS);
    expect(readingOf({}, EASE)).toEqual(LENGTHS);
    expect(readingOf({ category: 'classic' } as Measured, LENGTHS)).toEqual(LENGTHS);
    expect(readingOf({ undefined: 'classic' } as Measured, LENGTHS)).toEqual(LENGTHS);
  });
});

it('a schema has the units of its quantity, and of the other one', () => {
  expect(unitsOf(LENGTHS)).toEqual(['mm', 'cm', '[in_i]', 'in']);
  expect(unitsOf(BODY)).toEqual(['mm', 'cm', '[in_i]', 'in', 'kg', 'g', '[lb_av]', 'lb']);
});
