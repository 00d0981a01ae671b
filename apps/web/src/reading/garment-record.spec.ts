import { expect, it } from 'vitest';
import { blankGarment } from '../notebook/blank.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import { fromGarmentRecord, toGarmentRecord } from './garment-record.ts';

const notes: GarmentNotes = {
  ...blankGarment('cm'),
  name: 'Blue',
  measures: { 'chest-width': { text: '50', tape: 'cm' }, 'cuff-width': { text: '9', tape: 'cm' } },
  fits: 'loose',
  neckline: 'crew',
  sleeve: 'elbow',
  wears: { chest: 'right', 'across-back': 'roomy', neck: 'close' },
  confirmed: { 'chest-width': '50' },
};

it('keeps what is said of a sweater: how it fits and wears, neck, sleeve, and what is right', () => {
  const record = toGarmentRecord(notes);
  expect(record).toMatchObject({ fits: 'loose', neckline: 'crew', sleeve: 'elbow', wears: notes.wears });
  expect(record.measures).toEqual([
    { name: 'chest-width', text: '50', unit: 'cm', confirmed: true },
    { name: 'cuff-width', text: '9', unit: 'cm', confirmed: false },
  ]);
  const { record: _, ...back } = fromGarmentRecord(record);
  expect(back).toEqual(notes);
});

it('takes back that a measure is right, of a sweater that was stored too', () => {
  const stored = fromGarmentRecord(toGarmentRecord(notes));
  const [chest] = toGarmentRecord({ ...stored, confirmed: {} }).measures;
  expect(chest?.confirmed ?? false).toBe(false);
});

it('holds no longer that a measure is right when it changes', () => {
  const [chest] = toGarmentRecord({ ...notes, measures: { 'chest-width': { text: '51', tape: 'cm' } } }).measures;
  expect(chest?.confirmed ?? false).toBe(false);
});
