/** Sheets of every plain design, sewn together and rounded by a program that knows the published schema and nothing else of ours. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NECKLINES, SILHOUETTES } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { composeSheet, type SheetInput } from '#target-sheet';
import { sensibleInput } from '../target-sheet/any-input.ts';
import { childInput, exampleInput, meta } from '../target-sheet/inputs.ts';
import { rounded, sew } from './sew.mjs';

const written = (input: SheetInput): string => JSON.stringify(composeSheet(input, meta));

const plain = [exampleInput, childInput].flatMap((input) =>
  CONSTRUCTIONS.flatMap((construction) =>
    SILHOUETTES.flatMap((silhouette) =>
      NECKLINES.map((neckline) => ({ ...input, design: { ...input.design, construction, silhouette, neckline } })),
    ),
  ),
);

describe('a planner that nobody here wrote', () => {
  it('finds each edge that it must sew named on both pieces, and the others free by nature', () => {
    for (const input of plain) {
      const { seams, free } = sew(written(input));
      expect(seams.filter(({ named }) => !named)).toEqual([]);
      const alone = free.filter((edge) => !/ (hem|cuff|free-edge|left-end|right-end)$/.test(edge));
      expect(alone, `${input.design.construction} ${input.design.silhouette}`).toEqual([]);
    }
  });

  it('finds the two sleeves, their left the one that is drawn', () => {
    const { seams } = sew(written(exampleInput));
    const ofBack = seams.filter(({ from, to }) => from.startsWith('back ') && to.startsWith('sleeve '));
    expect(ofBack.map(({ from, to, mirrored }) => [from, to, mirrored])).toEqual([
      ['back right-armhole', 'sleeve back-armhole', true],
      ['back left-armhole', 'sleeve back-armhole', false],
    ]);
  });

  it('narrows no sleeve above its cuff', () => {
    for (const input of plain) expect(sew(written(input)).narrowing).toEqual([]);
  });

  /** Each defining dimension anywhere in its range, all at once; the others follow, and the piece closes. */
  it('closes every piece that it rounds, and keeps what is joined straight', () => {
    const request = sensibleInput.map((input) => ({ ...input, made: [] }));
    fc.assert(
      fc.property(request, fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })), (input, places) => {
        const values = rounded(written(input), (_, low, high) => low + (places.next().value ?? 0) * (high - low));
        expect(unclosed(values)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});

/** What must add up on a piece, or be the same on two; each a sum that is nothing. */
const SUMS: readonly Readonly<Record<string, number>>[] = [
  { 'back cross-back-width': 1, 'back shoulder-width': -2, 'back neck-width': -1 },
  { 'front cross-back-width': 1, 'front shoulder-width': -2, 'front neck-width': -1 },
  {
    'left-front width': 1,
    'left-front armhole-inset': -1,
    'left-front shoulder-width': -1,
    'left-front neck-width': -1,
  },
  ...['back', 'front'].map((piece) => ({
    [`${piece} width`]: 1,
    [`${piece} armhole-inset`]: -2,
    [`${piece} cross-back-width`]: -1,
  })),
  ...['front', 'left-front', 'right-front'].flatMap((piece) => [
    ...['body-to-underarm', 'armhole-depth', 'raglan-depth', 'shoulder-width', 'raglan-bind-off'].map((name) => ({
      [`${piece} ${name}`]: 1,
      [`back ${name}`]: -1,
    })),
    { [`${piece} front-edge`]: 1, [`${piece} shoulder-to-hem`]: -1, [`${piece} front-neck-depth`]: 1 },
  ]),
  { 'back shoulder-to-hem': 1, 'back centre-back-length': -1, 'back back-neck-depth': -1 },
  { 'back centre-back-length': 1, 'back body-to-underarm': -1, 'back raglan-depth': -1 },
  { 'sleeve sleeve-length': 1, 'sleeve underarm-seam': -1, 'sleeve cap-height': -1 },
  { 'sleeve sleeve-length': 1, 'sleeve underarm-seam': -1, 'sleeve sleeve-raglan-depth': -1 },
  { 'sleeve underarm-bind-off': 1, 'back underarm-bind-off': -1 },
  { 'sleeve raglan-bind-off': 1, 'back raglan-bind-off': -1 },
  { 'left-front front-edge': 1, 'front-band front-edge': -1 },
];

function unclosed(values: ReadonlyMap<string, number>): string[] {
  return SUMS.filter((sum) => Object.keys(sum).every((place) => values.has(place))).flatMap((sum) => {
    const left = Object.entries(sum).reduce((total, [place, times]) => total + times * values.get(place)!, 0);
    return Math.abs(left) < 1e-6 ? [] : [`${JSON.stringify(sum)} leaves ${left}`];
  });
}
