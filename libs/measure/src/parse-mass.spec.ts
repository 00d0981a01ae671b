import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from './domain-error.ts';
import { massFrom, massUnitOf, parseMass } from './parse-mass.ts';

/** 1 lb = 453.59237 g, 1 st = 14 lb, 16 oz = 1 lb; so 11 st 4 lb = 158 lb = 71667.59446 g. */
describe('parseMass', () => {
  it.each([
    ['62 kg', 62_000, 'kg'],
    ['62,5kg', 62_500, 'kg'],
    ['600 g', 600, 'g'],
    ['158 lb', 71_667.59446, '[lb_av]'],
    ['158 lbs.', 71_667.59446, '[lb_av]'],
    ['158 [lb_av]', 71_667.59446, '[lb_av]'],
    ['11 st 4 lb', 71_667.59446, '[lb_av]'],
    ['11 stone 4', 71_667.59446, '[lb_av]'],
    ['11st', 69_853.22498, '[lb_av]'],
    ['8 oz', 226.796185, '[lb_av]'],
    ['1 lb 8 oz', 680.388555, '[lb_av]'],
  ])('reads %j as %d g', (text, grams, unit) => {
    const read = parseMass(text);
    expect(read.grams).toBeCloseTo(grams, 8);
    expect(read).toMatchObject({ unit, text });
  });

  it('takes a number alone in the default unit', () => {
    expect(parseMass('62', { defaultUnit: 'kg' })).toEqual({ grams: 62_000, unit: 'kg', text: '62' });
  });

  it.each([
    ['62', 'mass-unit-missing', 'unit-missing'],
    ['11 st 14 lb', 'mass-ambiguous', 'smaller-unit-too-large'],
    ['11 st 4 kg', 'mass-ambiguous', 'units-disagree'],
    ['1,234 g', 'mass-ambiguous', 'comma-ambiguous'],
    ['62 cm', 'mass-unreadable', 'unknown-unit'],
    ['-1 kg', 'mass-out-of-range', 'negative'],
    ['1001 kg', 'mass-out-of-range', 'too-large'],
    ['', 'mass-unreadable', 'empty'],
  ])('refuses %j as %s', (text, code, fault) => {
    expect(() => parseMass(text)).toThrow(
      expect.objectContaining({
        code,
        params: expect.objectContaining({ fault: expect.objectContaining({ code: fault }) }),
      }),
    );
  });

  it('throws nothing but a DomainError', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[0-9.,/ kglbstoz½-]{0,12}$/), (text) => {
        try {
          expect(parseMass(text).grams).toBeGreaterThanOrEqual(0);
        } catch (error) {
          expect(error).toBeInstanceOf(DomainError);
        }
      }),
    );
  });
});

describe('massFrom and massUnitOf', () => {
  it('knows the UCUM codes and lb', () => {
    expect(['g', 'kg', '[lb_av]', 'lb'].map(massUnitOf)).toEqual(['g', 'kg', '[lb_av]', '[lb_av]']);
    expect(massFrom(62, 'kg')).toBe(62_000);
  });

  it.each(['st', 'oz', 'mm', ''])('does not know the unit %j', (unit) => {
    expect(() => massFrom(1, unit)).toThrow(
      expect.objectContaining({ code: 'unit-unknown', params: { kind: 'mass', text: unit } }),
    );
  });

  it('takes nothing at all, and says what is wrong with less', () => {
    expect(massFrom(0, 'kg')).toBe(0);
    expect(() => massFrom(-1, 'kg')).toThrow(
      expect.objectContaining({ params: { kind: 'mass', value: -1, unit: 'kg', fault: 'negative' } }),
    );
  });

  it.each([NaN, -1, 1e308])('refuses %d kg', (value) => {
    expect(() => massFrom(value, 'kg')).toThrow(expect.objectContaining({ code: 'mass-out-of-range' }));
  });
});
