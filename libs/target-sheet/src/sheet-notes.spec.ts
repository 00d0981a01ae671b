import { describe, expect, it } from 'vitest';
import { fabricOf, womanWith } from '../../../tests/support/fit-samples.ts';
import { sheetNotes } from './sheet-notes.ts';

describe('the notes of a sheet', () => {
  it('are those of body, fabric and advice, each once', () => {
    const row = { code: 'size-row', text: 'Between two sizes.' };
    const body = { ...womanWith({}), notes: [row, row] };
    const weight = { code: 'weight', text: 'The pieces weigh about 300 g.' };
    const codes = sheetNotes(body, fabricOf(3), [weight]).map(({ code }) => code);
    expect(codes).toEqual(['size-row', 'growth-unknown', 'rib-assumed', 'weight']);
  });

  it('name what was not measured', () => {
    const body = womanWith({});
    const guessed = { value: 990, u: 60, how: 'estimated', from: 'from chest girth' } as const;
    const notes = sheetNotes({ ...body, values: { ...body.values, 'hip-girth': guessed } }, fabricOf(3), []);
    expect(notes.at(-1)?.text).toBe('Not measured: hip girth. Taken instead: from chest girth.');
  });
});
