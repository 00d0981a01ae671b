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
    ['', { code: 'no-slash', params: { pointer: '' } }],
    ['width', { code: 'no-slash', params: { pointer: 'width' } }],
    ['/a~2', { code: 'tilde-not-escaped', params: { pointer: '/a~2' } }],
    ['/a~', { code: 'tilde-not-escaped', params: { pointer: '/a~' } }],
    ['/list/-', { code: 'element-not-numbered', params: { pointer: '/list/-' } }],
    ['/__proto__/x', { code: 'name-reserved', params: { name: '__proto__' } }],
    ['/a/constructor', { code: 'name-reserved', params: { name: 'constructor' } }],
    ['/prototype', { code: 'name-reserved', params: { name: 'prototype' } }],
  ])('%s is refused', (pointer, wrong) => expect(parsePointer(pointer)).toEqual({ wrong }));

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
