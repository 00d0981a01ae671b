import { expect, it } from 'vitest';
import { blankDesign, empty } from '../notebook/blank.ts';
import type { DesignNotes } from '../notebook/notebook.ts';
import { fromDesignRecord, toDesignRecord } from './design-record.ts';

const there = (notes: DesignNotes): DesignNotes => {
  const { record: _, ...back } = fromDesignRecord(toDesignRecord(notes), notes.title, 'cm');
  return back;
};

it('leaves out what was not chosen', () => {
  expect(toDesignRecord(blankDesign('cm'))).toMatchObject({ length: null, hem: null, basis: null, ease: null });
  expect(there(blankDesign('cm'))).toEqual(blankDesign('cm'));
});

it.each([
  ['garment', { as: 'garment', change: { text: '−3', unit: 'cm' } }],
  ['favourites', { as: 'favourites' }],
  ['loose', { category: 'loose', place: 0.5 }],
] as const)('takes an ease of “%s” there and back', (ease, written) => {
  const more = ease === 'garment' ? { text: '−3', tape: 'cm' as const } : empty('cm');
  const notes: DesignNotes = { ...blankDesign('cm'), length: 'as-garment', ease, change: more };
  expect(toDesignRecord(notes)).toMatchObject({ length: 'as-garment', ease: written });
  expect(there(notes)).toEqual(notes);
});
