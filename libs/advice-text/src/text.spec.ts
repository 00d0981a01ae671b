import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeSheet, type TargetSheet } from '#target-sheet';
import { anyInput } from '../../../tests/target-sheet/any-input.ts';

/** Every text of a sheet that has a code, with that code. */
function codedTexts({ design, assembled, pieces, checks, collisions, cautions, notes }: TargetSheet) {
  const dimensions = [...assembled, ...pieces.flatMap((piece) => piece.dimensions)];
  const { lies, liesCode } = design.ease;
  return [
    ...(lies === null ? [] : [[liesCode, lies] as const]),
    ...dimensions.flatMap(({ because, noAdvice }) => [
      ...because.flatMap(({ code, term, fromCode, from }) => [[code, term] as const, [fromCode, from] as const]),
      ...(noAdvice ? [[noAdvice.code, noAdvice.reason] as const] : []),
    ]),
    ...checks.flatMap(({ code, advice, remedies = [] }) => [
      [code, advice] as const,
      ...remedies.map((remedy) => [remedy.code, remedy.text] as const),
    ]),
    ...collisions.flatMap(({ wishes }) =>
      wishes.map((wish) =>
        typeof wish === 'string' ? ([undefined, wish] as const) : ([wish.code, wish.text] as const),
      ),
    ),
    ...[...cautions, ...notes].map(({ code, text }) => [code, text] as const),
  ];
}

describe('the texts of a sheet', () => {
  it('have a code each, and nothing in them that is no word', () => {
    fc.assert(
      fc.property(anyInput, fc.constantFrom('cm' as const, 'in' as const), (input, tape) => {
        const sheet = composeSheet(input, { id: 'sheet', createdAt: '2026-01-01T12:00:00Z' }, { tape });
        for (const [code, words] of codedTexts(sheet)) {
          expect(code, words).toMatch(/^[a-z]+(-[a-z]+)*$/);
          expect(words, code).toMatch(/\S/);
          expect(words, code).not.toMatch(/undefined|NaN|Infinity|\[object|null|  /);
        }
      }),
      { numRuns: 150 },
    );
  });
});
