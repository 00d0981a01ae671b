import { expect, it } from 'vitest';
import type { ProfileValue } from '../body-profile.ts';
import { beyondTable } from './beyond-table.ts';

const known = (value: number, u: number): ProfileValue => ({
  value,
  u,
  how: 'table',
  from: { code: 'assumed', params: {} },
});

it('beyond a table girths go with the chest and lengths with its root, wider and marked', () => {
  const row = { 'hip-girth': known(800, 20), 'arm-length': known(500, 10) };
  const values = beyondTable(row, 1.21);
  expect(values['hip-girth']!.value).toBeCloseTo(968, 9);
  expect(values['hip-girth']!.u).toBeCloseTo(Math.hypot(20, 84, 0.03 * 968), 9);
  expect(values['arm-length']!.value).toBeCloseTo(550, 9);
  expect(values['arm-length']!.u).toBeCloseTo(Math.hypot(10, 25, 0.03 * 550), 9);
  for (const value of Object.values(values)) expect(value).toMatchObject({ how: 'table', outsideSurveys: true });
});
