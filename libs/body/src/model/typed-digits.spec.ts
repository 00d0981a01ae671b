import { describe, expect, it } from 'vitest';
import { swappedDigits } from './typed-digits.ts';

const inCentimetres = (mm: number) => swappedDigits(mm, 'length').map((other) => Math.round(other) / 10);

describe('swapped digits', () => {
  it.each([
    ['98 cm could be 89', 980, 89],
    ['16.5 cm: across the point too, 15.6', 165, 15.6],
    ['167 cm could be 176', 1670, 176],
    ['4 cm could be 40 typed as 04', 40, 40],
    ['10 cm could be 100 typed as 010', 100, 100],
  ])('%s', (_, mm, other) => {
    expect(inCentimetres(mm)).toContain(other);
  });

  it('are read in inches where the value is a whole eighth: 37 1/2 could be 73 1/2', () => {
    expect(swappedDigits(37.5 * 25.4, 'length').some((mm) => Math.abs(mm - 73.5 * 25.4) < 1e-6)).toBe(true);
  });

  it('are not looked for behind a point nobody typed: 98 cm is never 90.8', () => {
    expect(inCentimetres(980)).not.toContain(90.8);
  });

  it('of a weight are read in kilograms and pounds', () => {
    expect(swappedDigits(56_000, 'weight')).toContain(65_000);
    const pounds = swappedDigits(124 * 453.59237, 'weight').map((grams) => Math.round(grams / 453.59237));
    expect(pounds).toEqual(expect.arrayContaining([214, 142]));
  });

  it('make no other number of 55', () => {
    expect(inCentimetres(550).filter((cm) => cm < 100)).toEqual([]);
  });
});
