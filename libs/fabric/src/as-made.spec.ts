import fc from 'fast-check';
import { expect, it } from 'vitest';
import { asMade } from './as-made.ts';

it('makes 500 in a fabric that grows by a fiftieth 490.2, and with an allowance of 10 exactly 500', () => {
  expect(asMade(500, 0, 0.02)).toBeCloseTo(490.196, 3);
  expect(asMade(500, 10, 0.02)).toBe(500);
});

it('grows, washed, to the value and its allowance', () => {
  const mm = fc.double({ min: 0, max: 2000, noNaN: true });
  fc.assert(
    fc.property(
      mm,
      fc.double({ min: 0, max: 40, noNaN: true }),
      fc.double({ min: -0.5, max: 1, noNaN: true }),
      (value, allowance, growth) => {
        expect(asMade(value, allowance, growth) * (1 + growth)).toBeCloseTo(value + allowance, 9);
      },
    ),
  );
});
