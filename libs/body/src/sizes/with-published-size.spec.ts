import { describe, expect, it } from 'vitest';
import type { Body } from '../body.ts';
import { withPublishedSize } from './with-published-size.ts';

const M = { table: 'craft-yarn-council-woman', size: 'M' };
const body = (...measures: Body['measures']): Body => ({ figure: 'unsaid', ageYears: null, measures });

describe('a published size', () => {
  it('stands for every measure of its row, and says the figure', () => {
    const { figure, measures } = withPublishedSize(body(), M);
    expect(figure).toBe('woman');
    expect(measures).toHaveLength(9);
    expect(measures.find(({ name }) => name === 'hip-girth')).toMatchObject({ value: 990.6, how: 'table' }); // 39 in
  });

  it('leaves alone what was measured', () => {
    const { measures } = withPublishedSize(body({ name: 'hip-girth', value: 1020, how: 'home' }), M);
    expect(measures.filter(({ name }) => name === 'hip-girth')).toEqual([
      { name: 'hip-girth', value: 1020, how: 'home' },
    ]);
    expect(measures).toHaveLength(9);
  });

  it('of a child says its age', () => {
    expect(withPublishedSize(body(), { table: 'craft-yarn-council-child', size: '6' }).ageYears).toBe(6);
  });

  it.each([
    [{ ...M, size: '7X' }, 'unknown-size', '/size/size'],
    [{ ...M, table: 'nobody' }, 'unknown-size-table', '/size/table'],
  ])('%j is refused with its place', (size, code, pointer) => {
    expect(() => withPublishedSize(body(), size)).toThrow(expect.objectContaining({ code, pointer }));
  });
});
