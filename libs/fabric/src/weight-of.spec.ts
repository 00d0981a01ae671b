import { expect, it } from 'vitest';
import { weightOf } from './weight-of.ts';

it('weighs a piece 500 by 600 mm at 400 g/m²: 0.3 m² × 400 = 120 g', () => {
  expect(weightOf(500 * 600, 400)).toBeCloseTo(120, 9);
});
