import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escapeToken, parsePointer } from './json-pointer.ts';

describe('parsePointer', () => {
  it.each([
    // RFC 6901, section 5: the pointers of its example document and the keys they mean.
    ['/foo', ['foo']],
    ['/foo/0', ['foo', '0']],
    ['/', ['']],
    ['/a~1b', ['a/b']],
    ['/c%d', ['c%d']],
    ['/e^f', ['e^f']],
    ['/g|h', ['g|h']],
    ['/i\\j', ['i\\j']],
    ['/k"l', ['k"l']],
    ['/ ', [' ']],
    ['/m~0n', ['m~n']],
    // Section 4: ~1 first, then ~0, so that ~01 is ~1 and not a slash.
    ['/~01', ['~1']],
  ])('%s', (pointer, tokens) => expect(parsePointer(pointer)).toEqual({ tokens }));

  it.each([
    ['', 'must start with a slash'],
    ['width', 'must start with a slash: "/width"'],
    ['/a~2', 'must be written ~0'],
    ['/a~', 'must be written ~0'],
    ['/list/-', 'give the number of the element'],
    ['/__proto__/x', '"__proto__" cannot be'],
    ['/a/constructor', '"constructor" cannot be'],
    ['/prototype', '"prototype" cannot be'],
  ])('%s is refused', (pointer, reason) =>
    expect(parsePointer(pointer)).toEqual({ wrong: expect.stringContaining(reason) }),
  );

  it('reads back any token that was escaped', () => {
    const token = fc.string().filter((text) => !['-', '__proto__', 'constructor', 'prototype'].includes(text));
    fc.assert(
      fc.property(fc.array(token, { minLength: 1 }), (tokens) => {
        const pointer = tokens.map((each) => `/${escapeToken(each)}`).join('');
        expect(parsePointer(pointer)).toEqual({ tokens });
      }),
    );
  });
});
