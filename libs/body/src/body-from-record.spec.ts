import { expect, it } from 'vitest';
import { bodyFromRecord } from './body-from-record.ts';

const chest = { name: 'chest-girth', value: 101, unit: 'cm' } as const;

it('takes the measures that were not taken from the row of the size that is bought', () => {
  const size = { table: 'craft-yarn-council-woman', size: 'M' };
  const { figure, measures } = bodyFromRecord({ measures: [chest], size });
  expect(figure).toBe('woman');
  expect(measures.filter(({ name }) => name === 'chest-girth')).toEqual([
    { name: 'chest-girth', value: 1010, how: 'home' },
  ]);
  expect(measures.length).toBeGreaterThan(1);
  for (const { name, how } of measures.slice(1)) expect(how, name).toBe('table');
});

it('refuses a size that its table does not have, and points to it', () => {
  const unknown = () => bodyFromRecord({ measures: [], size: { table: 'craft-yarn-council-woman', size: 'XXL' } });
  expect(unknown).toThrow(expect.objectContaining({ code: 'unknown-size', pointer: '/size/size' }));
});

it('is the measures alone without a size', () => {
  expect(bodyFromRecord({ measures: [chest], size: null }).measures).toHaveLength(1);
});
