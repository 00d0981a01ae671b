import { describe, expect, it } from 'vitest';
import { fabricOf, womanWith } from '../../../tests/support/fit-samples.ts';
import { sheetNotes } from './sheet-notes.ts';

const CM = { tape: 'cm' } as const;
const ESTIMATED = { code: 'body-model', params: { known: ['chest-girth'], version: 1 } } as const;

describe('the notes of a sheet', () => {
  it('are those of body, fabric and advice, each once', () => {
    const row = { code: 'no-size-table', params: {} } as const;
    const body = { ...womanWith({}), notes: [row, row] };
    const weight = { code: 'weight', text: 'The pieces weigh about 300 g.' };
    const codes = sheetNotes(body, fabricOf(3), [weight], CM).map(({ code }) => code);
    expect(codes).toEqual(['no-size-table', 'growth-unknown', 'stretch-assumed', 'rib-assumed', 'weight']);
  });

  it('name what was not measured', () => {
    const body = womanWith({});
    const guessed = { value: 990, u: 60, how: 'estimated', from: ESTIMATED } as const;
    const notes = sheetNotes({ ...body, values: { ...body.values, 'hip-girth': guessed } }, fabricOf(3), [], CM);
    expect(notes.at(-1)).toMatchObject({
      code: 'not-measured',
      params: { names: ['hip-girth'] },
      text: 'Not measured: hip girth. Taken instead: estimated from chest girth (body model 1, US Army surveys of 1988 and 2012).',
    });
  });
});
