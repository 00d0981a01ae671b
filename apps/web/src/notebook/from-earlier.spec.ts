import { expect, it } from 'vitest';
import { blankBody, blankDesign, blankGarment } from './blank.ts';
import { newCollection, newEntry, withAdded } from './collection.ts';
import { designFromEarlier, garmentsFromEarlier } from './from-earlier.ts';
import type { GarmentNotes } from './notebook.ts';

const { change: _, ...before } = blankDesign('in');
const earlier = { ...before, length: 'regular', hem: 'straight', ease: 'classic' } as const;
const easeChange = { text: '2', tape: 'in' } as const;
const ofEarlier = (basis: 'body' | 'garment' | 'both') =>
  designFromEarlier({ ...earlier, basis, easeChange } as unknown as Parameters<typeof designFromEarlier>[0]);

it.each(['garment', 'both'] as const)('takes the ease of a design on the basis “%s” from the sweater', (basis) => {
  expect(ofEarlier(basis)).toMatchObject({ basis, ease: 'garment', change: easeChange, length: 'regular' });
});

it('keeps the choices of a design that was based on the body', () => {
  expect(ofEarlier('body')).toEqual({ ...blankDesign('in'), ...earlier, basis: 'body' });
});

it('leaves a design of now as it is, whatever it is based on', () => {
  const design = { ...blankDesign('cm'), basis: 'garment', ease: 'loose' } as const;
  expect(designFromEarlier(design)).toEqual(design);
});

const { fits: _fits, neckline: _neckline, sleeve: _sleeve, wearer: _wearer, ...old } = blankGarment('cm');
const saved = (name: string) => ({ ...old, name }) as GarmentNotes;
const filled = { fits: null, neckline: null, sleeve: 'long' } as const;

it('fills in what a saved sweater does not have yet, in a version that conflicts too', () => {
  const { entries, ...collection } = newCollection('one', saved('Blue'));
  const conflict = { notes: saved('Red'), etag: '"2"' };
  const garments = { ...collection, entries: [{ ...entries[0]!, conflict }] };
  expect(garmentsFromEarlier(garments, newCollection('me', blankBody())).entries[0]).toMatchObject({
    notes: { ...filled, name: 'Blue' },
    conflict: { notes: { ...filled, name: 'Red' } },
  });
});

it('gives the sweater that was open to the body that was open, once', () => {
  const garments = withAdded(newCollection('a', saved('Blue')), newEntry('b', saved('Red')));
  const bodies = withAdded(newCollection('me', blankBody()), newEntry('him', blankBody()));
  const first = garmentsFromEarlier(garments, bodies);
  expect(first.entries.map(({ notes }) => notes.wearer)).toEqual([null, 'him']);
  expect(garmentsFromEarlier(first, { ...bodies, open: 'me' })).toEqual(first);
});
