import { describe, expect, it } from 'vitest';
import type { DomainError } from './domain-error.ts';
import type { Measured } from './measured.ts';
import { readMeasured } from './read-measured.ts';

const refusal = (measured: Measured, quantity: 'length' | 'difference' | 'mass' = 'length'): DomainError => {
  try {
    readMeasured(measured, quantity);
  } catch (error) {
    return error as DomainError;
  }
  throw new Error('It was read.');
};

/** 1 in = 25.4 mm, 1 lb = 453.59237 g. */
describe('readMeasured', () => {
  it.each([
    [{ value: 44.5, unit: 'cm' }, { size: 445 }],
    [
      { value: 17.5, unit: 'in', u: 0.5 },
      { size: 444.5, u: 12.7 },
    ],
    [{ value: 0, unit: 'mm', text: null, u: null }, { size: 0 }],
    [{ text: '17 1/2 in' }, { size: 444.5 }],
    [{ text: '17 1/2', unit: 'in', value: null }, { size: 444.5 }],
    [
      { text: '44.5 cm', u: 0.5 },
      { size: 445, u: 5 },
    ],
    [
      { text: '44.5', unit: 'cm', u: 0 },
      { size: 445, u: 0 },
    ],
  ] as const)('reads the length %j as %j', (measured, size) => {
    expect(readMeasured(measured, 'length')).toEqual(size);
  });

  it('reads masses and differences by their own rules', () => {
    expect(readMeasured({ value: 2, unit: 'lb', u: 1 }, 'mass')).toEqual({ size: 907.18474, u: 453.59237 });
    expect(readMeasured({ text: '62', unit: 'kg' }, 'mass')).toEqual({ size: 62_000 });
    expect(readMeasured({ text: '62 kg' }, 'mass')).toEqual({ size: 62_000 });
    expect(readMeasured({ text: '-2 in' }, 'difference')).toEqual({ size: -50.8 });
    expect(refusal({ text: '-2 in' })).toMatchObject({ code: 'length-out-of-range', pointer: '/text' });
  });

  it.each([
    [{ value: 44, text: '44 cm', unit: 'cm' }, 'measured-twice', '/text', {}],
    [{ unit: 'cm' }, 'measured-not', '/value', { kind: 'length' }],
    [{ value: null, text: null }, 'measured-not', '/value', { kind: 'length' }],
    [{ value: 44 }, 'unit-missing', '/unit', { kind: 'length' }],
    [{ value: 44, unit: null }, 'unit-missing', '/unit', { kind: 'length' }],
    [{ value: 44, unit: 'kg' }, 'unit-unknown', '/unit', { kind: 'length', text: 'kg' }],
    [{ text: '44', unit: 'kg' }, 'unit-unknown', '/unit', { kind: 'length', text: 'kg' }],
  ] as const)('refuses %j as %s at %s', (measured, code, pointer, params) => {
    expect(refusal(measured as Measured)).toMatchObject({ code, pointer, params });
  });

  it('points to the field that is at fault', () => {
    expect(refusal({ value: 1e9, unit: 'cm' })).toMatchObject({ code: 'length-out-of-range', pointer: '/value' });
    expect(refusal({ text: '44 x' })).toMatchObject({ code: 'length-unreadable', pointer: '/text' });
    expect(refusal({ text: '44' })).toMatchObject({ code: 'length-unit-missing', pointer: '/text' });
    expect(refusal({ value: 44, unit: 'cm', u: 1e9 })).toMatchObject({ code: 'length-out-of-range', pointer: '/u' });
  });

  it('reads a record once for each quantity it is asked for as, a refusal too', () => {
    const measured: Measured = { text: '-2 in' };
    expect(refusal(measured)).toBe(refusal(measured));
    expect(readMeasured(measured, 'difference')).toEqual({ size: -50.8 });
    expect(readMeasured(measured, 'difference')).toBe(readMeasured(measured, 'difference'));
    expect(refusal(measured)).toMatchObject({ code: 'length-out-of-range' });
  });

  it('passes on what is no fault of the record', () => {
    const broken = {
      get text(): string {
        throw new RangeError('not ours');
      },
    };
    expect(() => readMeasured(broken, 'length')).toThrow(RangeError);
    expect(() => readMeasured({ text: 5 as unknown as string }, 'length')).toThrow(TypeError);
  });
});
