import fc from 'fast-check';
import { expect, it } from 'vitest';
import { utf8 } from './utf8.ts';

it('gives the bytes that Buffer.from gives, of any text, also of one with halves of pairs', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), fc.integer({ min: 0, max: 0xffff }), (text, unit) => {
      const whole = text + String.fromCharCode(unit) + text;
      expect(utf8(whole).equals(Buffer.from(whole))).toBe(true);
    }),
  );
});

it.each([1, 2 ** 16, 2 ** 20])('writes %i characters, of one byte or of more', (length) => {
  for (const character of ['a', '½', '−', '👕']) {
    const text = character.repeat(length);
    expect(utf8(text).toString()).toBe(text);
  }
});

it('leaves what it gave before as it was', () => {
  const first = utf8('chest girth');
  utf8('waist girth');
  expect(first.toString()).toBe('chest girth');
});
