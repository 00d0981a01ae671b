import { expect, it } from 'vitest';
import { headGirthAt } from './head-girth-by-age.ts';

it.each([
  [0.25, 400],
  [1, 463],
  [6, 511],
  [16, 555],
  [7, 515.5], // half way from 511 at 6 to 520 at 8
  [2.5, 492.5], // half way from 486 at 2 to 499 at 3
  [0.125, 371], // half way from 342 at birth to 400 at 3 months
  [19, 555], // that of 16 years
])('head at %d years is %s mm', (age, mm) => {
  expect(headGirthAt(age)).toBe(mm);
});
