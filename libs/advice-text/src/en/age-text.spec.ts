import { expect, it } from 'vitest';
import { ageText } from './age-text.ts';

it.each([
  [0.25, '3 months'],
  [1 / 12, '1 month'],
  [1.5, '18 months'],
  [2, '2 years'],
  [6.25, '6.3 years'],
])('%d years is %s', (years, text) => {
  expect(ageText(years)).toBe(text);
});
