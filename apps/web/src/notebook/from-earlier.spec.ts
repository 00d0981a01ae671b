import { expect, it } from 'vitest';
import { blankBody, blankDesign, blankGarment } from './blank.ts';
import { newCollection, newEntry, withAdded, type Collection } from './collection.ts';
import { designFromEarlier, garmentsFromEarlier } from './from-earlier.ts';
import type { BodyNotes, GarmentNotes } from './notebook.ts';

const { moreThanGarment: _, ...before } = blankDesign('in');
const earlier = { ...before, length: 'regular', hem: 'straight', ease: 'classic' } as const;
const more = { text: '2', tape: 'in' } as const;

it('takes the ease of a design that was based on a sweater from that sweater, with its change', () => {
  expect(designFromEarlier({ ...earlier, basis: 'garment', easeChange: more })).toMatchObject({
    basis: 'garment',
    ease: 'garment',
    moreThanGarment: more,
    length: 'regular',
  });
});

it('keeps the choices of a design that was based on the body', () => {
  const design = designFromEarlier({ ...earlier, basis: 'body', easeChange: more });
  expect(design).toMatchObject({ basis: 'body', ease: 'classic', moreThanGarment: { text: '', tape: 'in' } });
  expect(design).not.toHaveProperty('easeChange');
});

it('leaves a design of now as it is, whatever it is based on', () => {
  const design = { ...blankDesign('cm'), basis: 'garment', ease: 'loose' } as const;
  expect(designFromEarlier(design)).toEqual(design);
});

it('fills in what a saved sweater does not have yet, in a version that conflicts too', () => {
  const { fits: _fits, neckline: _neckline, sleeve: _sleeve, wearer: _wearer, ...saved } = blankGarment('cm');
  const notes = { ...saved, name: 'Blue' } as GarmentNotes;
  const collection = newCollection('one', notes);
  const conflict = { notes: { ...notes, name: 'Red' }, etag: '"2"' };
  const garments = { ...collection, entries: [{ ...collection.entries[0]!, conflict }] };
  const { entries } = garmentsFromEarlier(garments, newCollection('me', blankBody()));
  const filled = { fits: null, neckline: null, sleeve: 'long' };
  expect(entries[0]).toMatchObject({
    notes: { ...filled, name: 'Blue', wearer: 'me' },
    conflict: { notes: { ...filled, name: 'Red' } },
  });
});

it('gives the open sweater to the open body, and the others where there is but one', () => {
  const { wearer: _, ...saved } = blankGarment('cm');
  const garments = withAdded(newCollection('a', saved as GarmentNotes), newEntry('b', saved as GarmentNotes));
  const wearers = (bodies: Collection<BodyNotes>) =>
    garmentsFromEarlier(garments, bodies).entries.map(({ notes }) => notes.wearer);
  const one = newCollection('me', blankBody());
  expect(wearers(one)).toEqual(['me', 'me']);
  expect(wearers(withAdded(one, newEntry('him', blankBody())))).toEqual([null, 'him']);
});
