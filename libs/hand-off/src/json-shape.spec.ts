import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TheirNameFault } from '#advice-text';
import { escapeToken, parsePointer } from './json-pointer.ts';
import { fill, layOut } from './json-shape.ts';
import type { Json } from './planner-takes.ts';

const values: Record<string, number> = { 'back/width': 20.5, 'sleeve/sleeve-length': 19.25, 'back/armhole-depth': 9 };
const build = (names: Record<string, string>): Json => fill(layOut(names), (name) => values[name]);
const faults = (names: Record<string, string>): TheirNameFault[] => layOut(names).faults.map(({ fault }) => fault);

describe('a planner’s document', () => {
  it('nests objects and lists', () => {
    const names = {
      'back/width': '/body/panels/0/w',
      'sleeve/sleeve-length': '/body/panels/1/len',
      'back/armhole-depth': '/a~1b',
    };
    expect(build(names)).toEqual({ body: { panels: [{ w: 20.5 }, { len: 19.25 }] }, 'a/b': 9 });
  });

  it('can be a list itself', () => {
    expect(build({ 'back/width': '/1', 'sleeve/sleeve-length': '/0' })).toEqual([19.25, 20.5]);
  });

  it('takes 01 for a key, not an element (RFC 6901, section 4)', () => {
    expect(build({ 'back/width': '/sizes/01' })).toEqual({ sizes: { '01': 20.5 } });
  });

  it('leaves out what has no value, and keeps the places of a list', () => {
    expect(build({ 'x/gone': '/a/b', 'back/width': '/c' })).toEqual({ c: 20.5 });
    expect(build({ 'x/gone': '/a/0', 'back/width': '/a/1' })).toEqual({ a: [null, 20.5] });
    expect(build({ 'x/gone': '/a' })).toEqual({});
  });

  it.each<[string, Record<string, string>, TheirNameFault]>([
    [
      'two names for one field',
      { 'back/width': '/w', 'front/width': '/w' },
      { code: 'filled-already', params: { pointer: '/w', by: 'back/width' } },
    ],
    [
      'a field below a field',
      { 'back/width': '/w', 'front/width': '/w/x' },
      { code: 'filled-above', params: { pointer: '/w', by: 'back/width' } },
    ],
    [
      'a field above a field',
      { 'back/width': '/w/x', 'front/width': '/w' },
      { code: 'holds-others', params: { pointer: '/w', holds: 'back/width' } },
    ],
    [
      'a list with a gap',
      { 'back/width': '/w/0', 'front/width': '/w/2' },
      { code: 'list-with-gap', params: { pointer: '/w', element: '2' } },
    ],
    [
      'a list with a key',
      { 'back/width': '/w/0', 'front/width': '/w/x' },
      { code: 'list-with-key', params: { pointer: '/w', element: '0', key: 'x' } },
    ],
    [
      'an object’s machinery',
      { 'back/width': '/__proto__/polluted' },
      { code: 'name-reserved', params: { name: '__proto__' } },
    ],
  ])('refuses %s', (_what, names, fault) => {
    expect(faults(names)).toEqual([fault]);
  });

  it('puts every value where its pointer finds it', () => {
    const key = fc.stringMatching(/^[a-z~/]{1,3}$/);
    const pointer = fc
      .array(key, { minLength: 1, maxLength: 4 })
      .map((keys) => keys.map((each) => `/${escapeToken(each)}`).join(''));
    fc.assert(
      fc.property(fc.uniqueArray(pointer, { maxLength: 8 }), (pointers) => {
        const names = Object.fromEntries(pointers.map((each, index) => [`n/${index}`, each]));
        const shape = layOut(names);
        fc.pre(shape.faults.length === 0);
        const document = fill(shape, (name) => name);
        for (const [name, at] of Object.entries(names)) expect(valueAt(document, at)).toBe(name);
      }),
    );
  });
});

/** What a JSON Pointer finds, by RFC 6901 read once more and apart from the code under test. */
function valueAt(document: Json, pointer: string): unknown {
  const parsed = parsePointer(pointer);
  if ('wrong' in parsed) throw new Error(parsed.wrong.code);
  return parsed.tokens.reduce<unknown>((inside, token) => (inside as Record<string, unknown>)[token], document);
}
