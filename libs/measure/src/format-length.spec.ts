import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatLength, inchesText } from './format-length.ts';
import { LENGTH_UNITS } from './length-unit.ts';
import { parseLength } from './parse-length.ts';

describe('formatLength', () => {
  it.each([
    [444.5, '17 1/2 in'],
    [431.8, '17 in'],
    [447.675, '17 5/8 in'],
    [12.7, '1/2 in'],
    [3.175, '1/8 in'],
    [6.35, '1/4 in'],
    [450.85, '17 3/4 in'],
    /** 17.97 in: nearest is 17 8/8, which is 18. */
    [456.438, '18 in'],
    [25.3, '1 in'],
    [0, '0 in'],
    [1, '0 in'],
    [-1, '0 in'],
    [-63.5, '-2 1/2 in'],
    [-12.7, '-1/2 in'],
  ])('%d mm is %j', (mm, text) => {
    expect(formatLength(mm, '[in_i]')).toBe(text);
  });

  it.each([
    [445, '44.5 cm'],
    [440, '44 cm'],
    [447.4, '44.5 cm'],
    [447.6, '45 cm'],
    [-75, '-7.5 cm'],
    [-1, '0 cm'],
  ])('%d mm is %j', (mm, text) => {
    expect(formatLength(mm, 'cm')).toBe(text);
  });

  it('writes whole millimetres, and a comma where asked', () => {
    expect(formatLength(444.5, 'mm')).toBe('445 mm');
    expect(formatLength(-0.2, 'mm')).toBe('0 mm');
    expect(formatLength(445, 'cm', { decimalSeparator: ',' })).toBe('44,5 cm');
  });

  it('writes inches without their unit', () => {
    expect(inchesText(444.5)).toBe('17 1/2');
  });

  it('is read back within half of its step, with the same text again', () => {
    const step = { mm: 1, cm: 5, '[in_i]': 3.175 };
    fc.assert(
      fc.property(fc.constantFrom(...LENGTH_UNITS), fc.double({ min: 0, max: 9990, noNaN: true }), (unit, mm) => {
        const text = formatLength(mm, unit);
        const back = parseLength(text).mm;
        expect(Math.abs(back - mm)).toBeLessThanOrEqual(step[unit] / 2 + 1e-9);
        expect(formatLength(back, unit)).toBe(text);
      }),
    );
  });
});
