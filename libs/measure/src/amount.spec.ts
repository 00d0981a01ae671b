import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readAmount } from './amount.ts';

describe('readAmount', () => {
  it.each([
    ['17', 17],
    ['17.5', 17.5],
    ['44,5', 44.5],
    ['.5', 0.5],
    [',5', 0.5],
    ['17.', 17],
    ['0,125', 0.125],
    ['17.125', 17.125],
    ['1234,5', 1234.5],
    ['1234,567', 1234.567],
    [',125', 0.125],
    ['.25', 0.25],
    ['1/2', 0.5],
    ['17 1/2', 17.5],
    ['17-1/2', 17.5],
    ['1 / 3', 1 / 3],
    ['0/4', 0],
  ])('%j is %d', (text, value) => {
    expect(readAmount(text)).toMatchObject({ value });
  });

  it.each([
    ['1,234', 'ambiguous', 'comma-ambiguous'],
    ['999,000', 'ambiguous', 'comma-ambiguous'],
    ['17 12', 'ambiguous', 'several-numbers'],
    ['17.5 1/2', 'ambiguous', 'several-numbers'],
    ['1/2/3', 'ambiguous', 'several-numbers'],
    ['17-18', 'ambiguous', 'several-numbers'],
    ['1.2.3', 'ambiguous', 'several-numbers'],
    ['1,234.5', 'ambiguous', 'several-numbers'],
    ['3/2', 'ambiguous', 'improper-fraction'],
    ['2/2', 'ambiguous', 'improper-fraction'],
    ['17 9/8', 'ambiguous', 'improper-fraction'],
    ['171/2', 'ambiguous', 'improper-fraction'],
    ['1/0', 'unreadable', 'divided-by-zero'],
    ['17 1/0', 'unreadable', 'divided-by-zero'],
    ['', 'unreadable', 'no-number'],
    ['. ,', 'unreadable', 'no-number'],
    ['-', 'unreadable', 'no-number'],
  ])('%j is %s', (text, problem, code) => {
    expect(readAmount(text)).toMatchObject({ problem, fault: { code } });
  });

  it.each([
    ['1,234', { plain: '1234', decimal: '1.234' }],
    ['1/0', { numerator: '1' }],
    ['171/2', { fraction: '171/2', example: '17 1/2' }],
    ['249/8', { fraction: '249/8', example: '24 9/8' }],
    ['3/2', { fraction: '3/2', example: '17 1/2' }],
    ['17 39/8', { fraction: '39/8', example: '17 1/2' }],
  ])('says of %j what was read: %j', (text, params) => {
    expect(readAmount(text)).toMatchObject({ fault: { params } });
  });

  it('reads every whole number, with either decimal sign and every proper fraction', () => {
    const proper = fc
      .integer({ min: 2, max: 64 })
      .chain((under) => fc.tuple(fc.integer({ min: 0, max: under - 1 }), fc.constant(under)));
    fc.assert(
      fc.property(fc.nat({ max: 9999 }), fc.nat({ max: 99 }), proper, (whole, hundredths, [over, under]) => {
        const digits = String(hundredths).padStart(2, '0');
        const decimal = whole + hundredths / 100;
        expect(readAmount(String(whole))).toEqual({ value: whole, whole: true });
        for (const sign of ['.', ',']) {
          const read = readAmount(`${whole}${sign}${digits}`);
          expect('value' in read && read.value).toBeCloseTo(decimal, 9);
        }
        expect(readAmount(`${whole} ${over}/${under}`)).toEqual({ value: whole + over / under, whole: false });
      }),
    );
  });
});
