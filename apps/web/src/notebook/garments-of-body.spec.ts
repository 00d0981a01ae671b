import { expect, it } from 'vitest';
import { MOST_GARMENTS } from '#target-sheet';
import { blankBody, blankGarment, blankNotebook } from './blank.ts';
import { newEntry } from './collection.ts';
import { garmentsOfBody, wearerOfGarment } from './garments-of-body.ts';
import { added } from './kinds.ts';
import { NOBODY, type Notebook } from './notebook.ts';

/** `wearers`: of each sweater, by its key. The first body is open. */
const notebook = (
  bodies: readonly string[],
  wearers: Readonly<Record<string, string | null>>,
  open: string,
): Notebook => ({
  ...blankNotebook('cm'),
  bodies: { open: bodies[0]!, entries: bodies.map((key) => newEntry(key, blankBody(key))), removed: [] },
  garments: {
    open,
    entries: Object.entries(wearers).map(([key, wearer]) =>
      newEntry(key, { ...blankGarment('cm'), name: key, wearer }),
    ),
    removed: [],
  },
});

const keys = ({ garments, bodies }: Notebook): readonly string[] =>
  garmentsOfBody(garments, bodies).map(({ key }) => key);

it('takes the sweaters of the open body, not those of another or of nobody', () => {
  expect(keys(notebook(['me', 'him'], { a: 'me', b: 'him', c: NOBODY, d: 'me' }, 'b'))).toEqual(['a', 'd']);
});

it('takes a sweater as the first body’s where that was not said, or where its wearer was removed', () => {
  const { bodies } = notebook(['me', 'him'], {}, '');
  expect([null, 'gone', 'him', NOBODY].map((wearer) => wearerOfGarment({ wearer }, bodies))).toEqual([
    'me',
    'me',
    'him',
    NOBODY,
  ]);
});

it('gives a new sweater to the open body, and leaves it out while it is blank', () => {
  const more = added(notebook(['me', 'him'], { a: 'me' }, 'a'), 'garments');
  expect(more.garments.entries[1]?.notes.wearer).toBe('me');
  expect(keys(more)).toEqual(['a']);
});

it('takes no more than a sheet does, and always the open one', () => {
  const many = Object.fromEntries(Array.from({ length: 40 }, (_, i) => [`s${i}`, 'me']));
  expect(keys(notebook(['me'], many, 's3'))).toEqual(Object.keys(many).slice(0, MOST_GARMENTS));
  expect(keys(notebook(['me'], many, 's39'))).toEqual([...Object.keys(many).slice(0, MOST_GARMENTS - 1), 's39']);
});
