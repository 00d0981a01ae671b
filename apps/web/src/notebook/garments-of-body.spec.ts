import { expect, it } from 'vitest';
import { MOST_GARMENTS } from '#target-sheet';
import { blankBody, blankGarment, blankNotebook } from './blank.ts';
import { newEntry } from './collection.ts';
import { garmentsOfBody } from './garments-of-body.ts';
import { added } from './kinds.ts';
import { NOBODY, type Notebook } from './notebook.ts';

const sweater = (key: string, wearer: string | null) => newEntry(key, { ...blankGarment('cm'), name: key, wearer });

const notebook = (
  bodies: readonly string[],
  wearers: Readonly<Record<string, string | null>>,
  open: string,
): Notebook => ({
  ...blankNotebook('cm'),
  bodies: { open: bodies[0]!, entries: bodies.map((key) => newEntry(key, blankBody(key))), removed: [] },
  garments: { open, entries: Object.entries(wearers).map(([key, wearer]) => sweater(key, wearer)), removed: [] },
});

const keys = (of: Notebook): readonly string[] => garmentsOfBody(of).map(({ key }) => key);

it('counts the sweaters of the open body, not those of another or of nobody', () => {
  expect(keys(notebook(['me', 'him'], { a: 'me', b: 'him', c: NOBODY, d: 'me' }, 'b'))).toEqual(['a', 'd']);
});

it('counts a sweater of which nothing was said while it is open, or where there is one body', () => {
  expect(keys(notebook(['me', 'him'], { a: null, b: null }, 'b'))).toEqual(['b']);
  expect(keys(notebook(['me'], { a: null, b: null }, 'b'))).toEqual(['a', 'b']);
});

it('takes the wearer that was removed as not said', () => {
  expect(keys(notebook(['me'], { a: 'gone' }, 'a'))).toEqual(['a']);
});

it('gives a new sweater to the open body, and leaves it out while it is blank', () => {
  const more = added(notebook(['me', 'him'], { a: 'me' }, 'a'), 'garments');
  expect(more.garments.entries[1]?.notes.wearer).toBe('me');
  expect(keys(more)).toEqual(['a']);
});

it('takes no more than a sheet does, and always the open one', () => {
  const many = Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`s${i}`, 'me']));
  expect(keys(notebook(['me'], many, 's3'))).toHaveLength(MOST_GARMENTS);
  expect(keys(notebook(['me'], many, 's39'))).toEqual([...Object.keys(many).slice(0, MOST_GARMENTS - 1), 's39']);
});

it('leaves the sweaters with the body that was alone, when another comes', () => {
  const more = added(notebook(['me'], { a: null, b: null }, 'b'), 'bodies');
  expect(keys(more)).toEqual([]);
  expect(keys({ ...more, bodies: { ...more.bodies, open: 'me' } })).toEqual(['a', 'b']);
});
