import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from './domain-error.ts';
import { LENGTH_UNITS, MM_PER_UNIT } from './length-unit.ts';
import { lengthFrom, parseLength, parseLengthDifference, unitOf } from './parse-length.ts';

/** 1 in = 25.4 mm, so 17 1/2 in = 444.5 mm and 5 ft 4 in = 64 in = 1625.6 mm. */
describe('parseLength', () => {
  it.each([
    ['17½ in', 444.5, '[in_i]'],
    ['17½"', 444.5, '[in_i]'],
    ['17.5"', 444.5, '[in_i]'],
    ['17 1/2"', 444.5, '[in_i]'],
    ['17 1/2″', 444.5, '[in_i]'],
    ["17 1/2''", 444.5, '[in_i]'],
    ['17-1/2 inches', 444.5, '[in_i]'],
    ['17-½ Inch', 444.5, '[in_i]'],
    ['17 1/2 IN.', 444.5, '[in_i]'],
    ['17\u00A01/2\u2009in', 444.5, '[in_i]'],
    ['17,5 [in_i]', 444.5, '[in_i]'],
    ['1/2 in', 12.7, '[in_i]'],
    ['½in', 12.7, '[in_i]'],
    ['29 ¼ in', 742.95, '[in_i]'],
    ['6⅛ in', 155.575, '[in_i]'],
    ['7⅔ in', 194.7333333333, '[in_i]'],
    ['44.5cm', 445, 'cm'],
    ['44,5 cm', 445, 'cm'],
    ['44 cm 5 mm', 445, 'cm'],
    ['44 centimetres', 440, 'cm'],
    ['445mm', 445, 'mm'],
    ['1.2 m', 1200, 'cm'],
    ['1m64', 1640, 'cm'],
    ['1 m 64 cm', 1640, 'cm'],
    ['5\'4"', 1625.6, '[in_i]'],
    ['5′4″', 1625.6, '[in_i]'],
    ["5'4''", 1625.6, '[in_i]'],
    ["5'4", 1625.6, '[in_i]'],
    ['5 ft 4 in', 1625.6, '[in_i]'],
    ['5 ft. 4 in.', 1625.6, '[in_i]'],
    ['5 feet 4', 1625.6, '[in_i]'],
    ['5\' 4 1/2"', 1638.3, '[in_i]'],
    ["5'4½", 1638.3, '[in_i]'],
    ["5'4 15/16", 1649.4125, '[in_i]'],
    ["5'", 1524, '[in_i]'],
    ['5.5 ft', 1676.4, '[in_i]'],
    ['0 cm', 0, 'cm'],
    ['10 m', 10_000, 'cm'],
  ])('reads %j as %d mm', (text, mm, unit) => {
    const read = parseLength(text);
    expect(read.mm).toBeCloseTo(mm, 9);
    expect(read).toMatchObject({ unit, text });
  });

  it.each([
    ['17 1/2', '[in_i]', 444.5],
    ['½', '[in_i]', 12.7],
    ['44,5', 'cm', 445],
    ['445', 'mm', 445],
  ] as const)('takes the unit of %j from the default, %s', (text, defaultUnit, mm) => {
    expect(parseLength(text, { defaultUnit })).toEqual({ mm, unit: defaultUnit, text });
  });

  it('lets a written unit win over the default', () => {
    expect(parseLength('445 mm', { defaultUnit: '[in_i]' })).toMatchObject({ mm: 445, unit: 'mm' });
  });

  it.each([
    ['17 1/2', 'length-unit-missing', 'unit-missing'],
    ['1,234 mm', 'length-ambiguous', 'comma-ambiguous'],
    ['17 12 in', 'length-ambiguous', 'several-numbers'],
    ['1/2/3', 'length-ambiguous', 'several-numbers'],
    ['17.5 1/2 in', 'length-ambiguous', 'several-numbers'],
    ['17 3/2 in', 'length-ambiguous', 'improper-fraction'],
    ['171/2 in', 'length-ambiguous', 'improper-fraction'],
    ['1/0 in', 'length-unreadable', 'divided-by-zero'],
    ['5 cm 4 in', 'length-ambiguous', 'units-disagree'],
    ['5 in 4 ft', 'length-ambiguous', 'units-disagree'],
    ['17 in 1/2', 'length-ambiguous', 'units-disagree'],
    ['5 ft 4 in 3 mm', 'length-ambiguous', 'units-disagree'],
    ['1m6', 'length-ambiguous', 'units-disagree'],
    ['5.5 ft 4 in', 'length-ambiguous', 'smaller-unit-too-large'],
    ["5'12", 'length-ambiguous', 'smaller-unit-too-large'],
    ['-4 cm', 'length-out-of-range', 'negative'],
    ['− 4 cm', 'length-out-of-range', 'negative'],
    ['', 'length-unreadable', 'empty'],
    [' \u00A0 ', 'length-unreadable', 'empty'],
    ['NaN', 'length-unreadable', 'no-number'],
    ['Infinity cm', 'length-unreadable', 'no-number'],
    ['1e308 mm', 'length-unreadable', 'unknown-unit'],
    ['17 stitches', 'length-unreadable', 'unknown-unit'],
    ['17² in', 'length-unreadable', 'unknown-unit'],
    ['cm 44', 'length-unreadable', 'no-number'],
    ['constructor', 'length-unreadable', 'no-number'],
    ['4 constructor', 'length-unreadable', 'unknown-unit'],
    ['10.01 m', 'length-out-of-range', 'too-large'],
    ['9'.repeat(39), 'length-unit-missing', 'unit-missing'],
    ['9'.repeat(36) + ' mm', 'length-out-of-range', 'too-large'],
    ['4'.repeat(41), 'length-unreadable', 'too-long'],
  ])('refuses %j as %s', (text, code, fault) => {
    expect(() => parseLength(text)).toThrow(
      expect.objectContaining({
        code,
        params: expect.objectContaining({ fault: expect.objectContaining({ code: fault }) }),
      }),
    );
  });

  it.each([
    ['4'.repeat(41), { code: 'too-long', params: { longest: 40 } }],
    ['17 stitches', { code: 'unknown-unit', params: { unit: 'stitches', known: ['mm', 'cm', 'm', 'in', 'ft'] } }],
    ['5 ft 4 in 3', { code: 'units-disagree', params: {} }],
    ['5 mm 4', { code: 'units-disagree', params: {} }],
    ['5 4 in', { code: 'several-numbers', params: {} }],
  ])('says of %j what is wrong: %j', (text, fault) => {
    expect(() => parseLength(text)).toThrow(
      expect.objectContaining({ params: expect.objectContaining({ fault: expect.objectContaining(fault) }) }),
    );
  });

  it('takes a text of 40 characters, and shows it whole where it is wrong', () => {
    expect(parseLength(`${'0'.repeat(37)}5 mm`.slice(-40)).mm).toBe(5);
    const text = 'x'.repeat(40);
    expect(() => parseLength(text)).toThrow(expect.objectContaining({ params: expect.objectContaining({ text }) }));
  });

  it('gives the text that was read, cut where it is long', () => {
    const read = (text: string) => expect.objectContaining({ params: expect.objectContaining({ text }) });
    expect(() => parseLength('17 12 in')).toThrow(read('17 12 in'));
    expect(() => parseLength('4'.repeat(41))).toThrow(read(`${'4'.repeat(40)}…`));
  });

  it('throws a DomainError or reads a length within range, whatever the text', () => {
    const typed = fc.stringMatching(/^[0-9½¾.,/' "”″ftcminé²e+\-−–\u00A0]{0,20}$/);
    fc.assert(
      fc.property(fc.oneof(typed, fc.string({ unit: 'binary' }), fc.double().map(String)), (text) => {
        try {
          const { mm, unit } = parseLength(text, { defaultUnit: 'cm' });
          expect(mm).toBeGreaterThanOrEqual(0);
          expect(mm).toBeLessThanOrEqual(10_000);
          expect(LENGTH_UNITS).toContain(unit);
        } catch (error) {
          expect(error).toBeInstanceOf(DomainError);
          expect((error as DomainError).code).toMatch(/^length-(unreadable|ambiguous|unit-missing|out-of-range)$/);
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('reads back what it is given, in every unit', () => {
    fc.assert(
      fc.property(fc.constantFrom(...LENGTH_UNITS), fc.integer({ min: 0, max: 30_000 }), (unit, hundredths) => {
        const { mm } = parseLength(`${(hundredths / 100).toFixed(2)} ${unit}`);
        expect(mm).toBeCloseTo((hundredths / 100) * MM_PER_UNIT[unit], 9);
      }),
    );
  });
});

describe('parseLengthDifference', () => {
  it.each([
    ['-2 in', -50.8],
    ['−2½ in', -63.5],
    ['+5 cm', 50],
    ['5 cm', 50],
    [' - 1 cm', -10],
    ['-0 cm', 0],
  ])('reads %j as %d mm', (text, mm) => {
    expect(parseLengthDifference(text)).toMatchObject({ mm, text });
  });

  it('takes one sign only', () => {
    expect(() => parseLengthDifference('--5 cm')).toThrow(expect.objectContaining({ code: 'length-out-of-range' }));
  });
});

describe('lengthFrom and unitOf', () => {
  it('knows the UCUM codes and their spellings', () => {
    expect(['mm', 'cm', '[in_i]', 'in', 'IN', ' inches '].map(unitOf)).toEqual([
      'mm',
      'cm',
      ...Array(4).fill('[in_i]'),
    ]);
    expect(lengthFrom(17.5, 'in')).toBe(444.5);
    expect(lengthFrom(-7.5, 'cm')).toBe(-75);
  });

  it.each(['m', 'ft', 'furlong', '', '__proto__', 'constructor'])('does not know the unit %j', (unit) => {
    expect(() => lengthFrom(1, unit)).toThrow(
      expect.objectContaining({ code: 'unit-unknown', params: { kind: 'length', text: unit } }),
    );
  });

  it.each([NaN, Infinity, -Infinity, 1e308, 10_001, -10_001])('refuses %d mm', (value) => {
    expect(() => lengthFrom(value, 'mm')).toThrow(expect.objectContaining({ code: 'length-out-of-range' }));
  });
});
