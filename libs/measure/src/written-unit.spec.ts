import { describe, expect, it } from 'vitest';
import { LENGTH } from './length-kind.ts';
import { MASS } from './mass-kind.ts';
import { parseQuantity } from './parse-quantity.ts';
import { sizeFrom, unitCode, writtenUnit } from './written-unit.ts';

/** Sizes by definition: 1 in = 25.4 mm, 1 ft = 12 in, 1 lb = 453.59237 g, 1 oz = 1/16 lb, 1 st = 14 lb. */
describe('every spelling of a unit', () => {
  it.each([
    ['mm millimetre millimetres millimeter millimeters', 1, 'mm'],
    ['cm cms centimetre centimetres centimeter centimeters', 10, 'cm'],
    ['m metre metres meter meters', 1000, 'cm'],
    ['in ins inch inches " [in_i]', 25.4, '[in_i]'],
    ["ft foot feet ' [ft_i]", 304.8, '[in_i]'],
  ])('of %j has %d mm and is shown in %s', (spellings, size, shownIn) => {
    for (const spelling of spellings.split(' ')) {
      expect(writtenUnit(spelling, LENGTH), spelling).toMatchObject({ size, shownIn });
      expect(parseQuantity(`2 ${spelling}`, LENGTH), spelling).toEqual({ size: 2 * size, unit: shownIn });
    }
  });

  it.each([
    ['g gr gram grams gramme grammes', 1, 'g'],
    ['kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes', 1000, 'kg'],
    ['oz ounce ounces [oz_av]', 28.349523125, '[lb_av]'],
    ['lb lbs pound pounds [lb_av]', 453.59237, '[lb_av]'],
    ['st stone stones [stone_av]', 6350.29318, '[lb_av]'],
  ])('of %j has %d g and is shown in %s', (spellings, size, shownIn) => {
    for (const spelling of spellings.split(' ')) {
      expect(writtenUnit(spelling, MASS), spelling).toEqual(expect.objectContaining({ shownIn }));
      expect(parseQuantity(`2 ${spelling}`, MASS).size, spelling).toBeCloseTo(2 * size, 9);
    }
  });

  it('is no other’s, and none is empty', () => {
    for (const { written } of [LENGTH, MASS]) {
      const all = Object.values(written).flatMap(({ spellings }) => spellings);
      expect(new Set(all).size).toBe(all.length);
      expect(all).not.toContain('');
    }
  });
});

describe('a smaller unit without its name', () => {
  const fits = (unit: { then?: { unnamed: RegExp } } | undefined, text: string) => unit?.then?.unnamed.test(text);

  it.each([
    ['cm', ['5', '0'], ['55', 'x', '5x', '', '5.5']],
    ['m', ['64', '05'], ['6', '640', 'x64', '64x', '6 4']],
    ['ft', ['4', '11', '4 1/2', '11 15/16'], ['x4', '4x', '111', '4 1/222', '4 111/2', '1/2', '4 1/']],
  ] as const)('after %s is a number such as %j, none such as %j', (unit, right, wrong) => {
    for (const text of right) expect(fits(LENGTH.written[unit], text), text).toBe(true);
    for (const text of wrong) expect(fits(LENGTH.written[unit], text), text).toBe(false);
  });

  it.each(['lb', 'st'])('after %s is a whole number of one or two digits', (unit) => {
    for (const text of ['4', '12']) expect(fits(MASS.written[unit], text), text).toBe(true);
    for (const text of ['123', 'x4', '4x', 'x', '4.5']) expect(fits(MASS.written[unit], text), text).toBe(false);
  });
});

describe('unitCode and sizeFrom', () => {
  it('know the unit that is kept by any spelling, and none that is only written', () => {
    expect([' CM ', 'Inches', 'in'].map((text) => unitCode(text, LENGTH))).toEqual(['cm', '[in_i]', '[in_i]']);
    expect(() => unitCode('feet', LENGTH)).toThrow(expect.objectContaining({ code: 'unit-unknown' }));
  });

  it('show what they do not know cut to 20 characters', () => {
    expect(() => unitCode('x'.repeat(30), LENGTH)).toThrow(
      expect.objectContaining({ params: { kind: 'length', text: 'x'.repeat(20) } }),
    );
  });

  it('take the largest that is believed, and refuse what is beyond it with all that is said of it', () => {
    expect(sizeFrom(10_000, 'mm', LENGTH)).toBe(10_000);
    expect(sizeFrom(-10_000, 'mm', LENGTH)).toBe(-10_000);
    expect(() => sizeFrom(1000.1, 'cm', LENGTH)).toThrow(
      expect.objectContaining({
        code: 'length-out-of-range',
        params: { kind: 'length', value: 1000.1, unit: 'cm', fault: 'too-large' },
      }),
    );
  });
});
