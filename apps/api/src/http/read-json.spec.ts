import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJson } from './read-json.ts';

const read = (text: string): object => readJson(Buffer.from(text));

/** Texts with what a glance could stumble over. */
const word = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 6 }),
  fc.constantFrom(':', '{', ']', '\\', '"', 'a:b', '[[[[', 'title'),
);
const name = word.filter((key) => key !== 'prototype' && !(key in Object.prototype) && !key.includes('\0'));
const { value } = fc.letrec((tie) => ({
  value: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    word.filter((text) => !text.includes('\0')),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constantFrom(null, true, false),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(name, tie('value'), { maxKeys: 4 }),
  ),
}));
const body = fc.dictionary(name, value, { maxKeys: 5 });
const spacing = fc.constantFrom(undefined, 1, '\t');

describe('a body', () => {
  it('that is sound is read, whatever it says', () => {
    fc.assert(
      fc.property(body, spacing, (json, space) => {
        const text = JSON.stringify(json, null, space);
        expect(read(text)).toEqual(JSON.parse(text));
      }),
    );
  });

  it('in which a key is given twice is refused, plain or escaped, at any depth', () => {
    const twice = fc.record({
      before: body,
      key: name.filter((key) => key !== ''),
      inside: fc.nat(4),
      escaped: fc.boolean(),
    });
    fc.assert(
      fc.property(twice, ({ before, key, inside, escaped }) => {
        const name = JSON.stringify(key);
        const again = escaped ? `"${[...key].map((c) => escapedUnits(c)).join('')}"` : name;
        const text = `{${name}: ${JSON.stringify(before)}, ${again}: 1}`;
        const nested = '{"in":['.repeat(inside) + text + ']}'.repeat(inside);
        expect(() => read(nested)).toThrow(/is given twice/);
      }),
    );
  });

  it.each(['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty'])(
    'with the key %s is refused, and that word is a text like any other',
    (key) => {
      expect(() => read(`{"a": [{"${key}": 1}]}`)).toThrow();
      expect(() => read(`{"a": ["${key}"]}`)).not.toThrow();
    },
  );

  it('is read to a depth of 20', () => {
    const deep = (depth: number) => `{"a":${'['.repeat(depth - 1)}${']'.repeat(depth - 1)}}`;
    expect(() => read(deep(20))).not.toThrow();
    expect(() => read(deep(21))).toThrow();
  });
});

/** A character as a JSON text may escape it. */
function escapedUnits(character: string): string {
  return Array.from({ length: character.length }, (_, unit) => {
    return `\\u${character.charCodeAt(unit).toString(16).padStart(4, '0')}`;
  }).join('');
}
