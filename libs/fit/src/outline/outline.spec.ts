import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TargetSheet } from '#target-sheet';
import { fitRequest, strangeRequest, wholeBody } from '../../../../tests/support/fit-requests.ts';
import { adviceOn, fabricOf, mm, requestOf, womanWith } from '../../../../tests/support/fit-samples.ts';
import { outlineLaws } from '../../../../tests/support/outline-laws.ts';
import { DomainError } from '#measure';
import type { Advice, Piece, PieceName } from '../messages/advice.ts';
import { advise } from '../advice/advise.ts';
import { CONSTRUCTIONS } from '#garment';
import { NECKLINES, SILHOUETTES } from '../design/design.ts';

/** The laws look at pieces and checks alone. */
const broken = (advice: Advice) => outlineLaws({ ...advice, unit: 'mm' } as unknown as TargetSheet);
const piece = (advice: Advice, name: PieceName): Piece => advice.pieces.find((one) => one.piece === name)!;

describe('an outline', () => {
  it('is simple and counter-clockwise, has the named extents, and joins its neighbours', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        expect(broken(advise(request))).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  it('is so or is not there, whatever is asked', () => {
    fc.assert(
      fc.property(strangeRequest, (request) => {
        let advice: Advice;
        try {
          advice = advise(request);
        } catch (error) {
          expect(error).toBeInstanceOf(DomainError);
          return;
        }
        for (const { where, law } of broken(advice)) expect(`${where} ${law}`).not.toMatch(/crosses|clockwise|corners/);
      }),
      { numRuns: 150 },
    );
  });

  it('is there for every piece of a plain garment for any body', () => {
    const design = fc.record({
      construction: fc.constantFrom(...CONSTRUCTIONS),
      silhouette: fc.constantFrom(...SILHOUETTES),
      neckline: fc.constantFrom(...NECKLINES.filter((each) => each !== 'boat')),
    });
    const adults = wholeBody.filter(({ figure }) => figure === 'woman' || figure === 'man');
    fc.assert(
      fc.property(adults, design, (body, design) => {
        const { pieces, assembled } = advise(requestOf({ body, design: { length: 'long', ...design } }));
        const known = assembled.every(({ value }) => value !== null);
        const shoulders = pieces[0]!.dimensions.every(({ name, value }) => name !== 'shoulder-width' || value! > 0);
        fc.pre(known && shoulders);
        expect(pieces.filter(({ outline }) => outline === undefined).map(({ piece }) => piece)).toEqual([]);
      }),
      { numRuns: 80 },
    );
  });
});

describe('the corners', () => {
  it('of a drop shoulder’s sleeve: cuff, where it steps out above the rib, underarm, top', () => {
    const advice = adviceOn();
    const [cuff, above, top, length] = ['cuff-width', 'above-rib-width', 'sleeve-top-width', 'sleeve-length'].map(
      (name) => mm(advice, `sleeve/${name}`),
    );
    const [step, beside] = [(above! - cuff!) / 2, (top! - cuff!) / 2];
    expect(piece(advice, 'sleeve').outline!.map(([x, y]) => [x + 0, y + 0])).toEqual(
      [
        [0, 0],
        [cuff, 0],
        [cuff, 50],
        [cuff! + step, 50],
        [cuff! + beside, length],
        [cuff! / 2, length],
        [-beside, length],
        [-step, 50],
        [0, 50],
      ].map((corner) => corner.map((x) => expect.closeTo(x!, 9))),
    );
  });

  /** 50 up the rib, and the slope: what lies between is worked in one row. */
  it('of a sleeve leave its step out of the seam under the arm', () => {
    const advice = adviceOn();
    const [above, top, length] = ['above-rib-width', 'sleeve-top-width', 'sleeve-length'].map((name) =>
      mm(advice, `sleeve/${name}`),
    );
    const seam = piece(advice, 'sleeve').edges.find(({ edge }) => edge === 'left-seam')!.length;
    expect(seam).toBeCloseTo(50 + Math.hypot((top! - above!) / 2, length! - 50), 9);
  });

  /** A crocheted rib does not draw in. */
  it('of a crocheted sleeve have no step', () => {
    const advice = adviceOn({ fabric: fabricOf(3, { craft: 'crochet', ribStretch: 1 }) });
    expect(piece(advice, 'sleeve').outline).toHaveLength(7);
  });

  it('of a V: one point in the middle, as deep as it says', () => {
    const advice = adviceOn({ design: { neckline: 'v' } });
    const outline = piece(advice, 'front').outline!;
    const [middle, height] = [mm(advice, 'front/width') / 2, mm(advice, 'front/shoulder-to-hem')];
    const inside = outline.filter(([x, y]) => Math.abs(x - middle) < 1 && y > 0);
    expect(inside).toHaveLength(1);
    expect(inside[0]![1]).toBeCloseTo(height - mm(advice, 'front/front-neck-depth'), 9);
  });

  it('of a right front mirror those of the left', () => {
    const advice = adviceOn({ design: { silhouette: 'cardigan', construction: 'set-in' } });
    const width = mm(advice, 'left-front/width');
    const left = piece(advice, 'left-front').outline!.map(([x, y]) => `${x.toFixed(6)} ${y.toFixed(6)}`);
    const right = piece(advice, 'right-front').outline!.map(([x, y]) => `${(width - x).toFixed(6)} ${y.toFixed(6)}`);
    expect(right.toSorted()).toEqual(left.toSorted());
  });

  it('of bands are rectangles: as long as the edge they are worked on, as deep as the band', () => {
    const advice = adviceOn();
    const edge = mm(advice, 'neck-band/neck-edge');
    expect(piece(advice, 'neck-band').outline).toEqual([
      [0, 0],
      [edge, 0],
      [edge, 25],
      [0, 25],
    ]);
  });
});

describe('a piece without an outline', () => {
  const drawn = (advice: Advice) => advice.pieces.filter(({ outline }) => outline).map(({ piece }) => piece);

  it('is one that lacks a number: no arm, no sleeve', () => {
    expect(drawn(adviceOn({ body: womanWith({ 'nape-to-cuff': undefined }) }))).toEqual(['back', 'front', 'neck-band']);
  });

  it('is one whose neck would end below its hem', () => {
    const design = { frontNeckDepthMm: 620, silhouette: 'vest' } as const;
    expect(drawn(adviceOn({ design }))).toEqual(['back', 'neck-band', 'armhole-band']);
  });

  it('is a band of no depth', () => {
    expect(drawn(adviceOn({ design: { bandMm: 0 } }))).toEqual(['back', 'front', 'sleeve']);
  });
});
