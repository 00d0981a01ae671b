import { describe, expect, it } from 'vitest';
import {
  adviceOn,
  bodyOf,
  check,
  fabricOf,
  mm,
  WOMAN,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import type { Advice } from '../messages/advice.ts';

const START = 371 / 5;
/** The plain request in a rib that gives nothing, for a head of this girth: 1.02 times as much is to pass a crew of 385 round. */
const withHead = (head: number, design: Differs['design'] = {}): Advice =>
  adviceOn({ body: womanWith({ 'head-girth': head }), fabric: fabricOf(3, { ribStretch: 0 }), design });
const widened = (advice: Advice): number => mm(advice, 'front-neck-depth') / START;

describe('how a neck opens that nothing was said of', () => {
  /** 1.5 × 385 = 577.5 ≥ 1.02 × 561. */
  it('is not at all where it can be made large enough', () => {
    expect(withHead(561).design.opening.at).toBe('none');
    expect(widened(withHead(561))).toBeGreaterThan(1.4);
  });

  /** 1.2 × 385 = 462: a head of 640 needs 652.8, 95 at one shoulder of 142; one of 760 needs 775.2, 157 at one, and 78 at each of both. */
  it('is at one shoulder where the opening has its place there, else at both, beside a neck a fifth larger', () => {
    expect([640, 760].map((head) => withHead(head).design.opening.at)).toEqual(['shoulder', 'shoulders']);
    for (const head of [640, 760]) {
      expect(widened(withHead(head))).toBeCloseTo(1.2, 9);
      expect(check(withHead(head), 'head-through-neck').verdict).toBe('fine');
    }
  });

  /** Beside a back of 230 both shoulders of a set-in are short. */
  it('is at the back where the shoulders have no room for it', () => {
    const body = womanWith({ 'head-girth': 760, 'across-back': 230 });
    const advice = adviceOn({ body, fabric: fabricOf(3, { ribStretch: 0 }), design: { construction: 'set-in' } });
    expect(advice.design.opening.at).toBe('back');
    expect(check(advice, 'head-through-neck').verdict).toBe('fine');
  });

  it('is at the back of a raglan vest, which has no seam beside its neck', () => {
    expect(withHead(640, { silhouette: 'vest', construction: 'raglan' }).design.opening.at).toBe('back');
    expect(withHead(640, { construction: 'raglan' }).design.opening.at).toBe('shoulder');
  });

  it('is not known without a head', () => {
    const body = womanWith({ 'head-girth': undefined });
    expect(adviceOn({ body, fabric: fabricOf(3, { ribStretch: 0 }) }).design.opening.at).toBe('none');
  });

  /** Its P of 283 stretches to 424.7: a head of 430 does not pass, though 420 does, by less than 2 %. */
  it('of a neck that is all the maker’s is where the head itself does not pass', () => {
    const own = { neckWidthMm: 120, frontNeckDepthMm: 40, backNeckDepthMm: 10 };
    const at = (head: number) =>
      adviceOn({ body: bodyOf({ ...WOMAN, 'head-girth': head }), design: own }).design.opening.at;
    expect([at(420), at(430)]).toEqual(['none', 'shoulder']);
  });
});

describe('a neck that is not to open', () => {
  it('is made as large as helps, or a fifth, and its check may fail', () => {
    const closed = { opening: { at: 'none', lengthMm: null } } as const;
    expect(widened(withHead(561, closed))).toBeGreaterThan(1.4);
    expect(check(withHead(561, closed), 'head-through-neck').verdict).not.toBe('fails');
    expect(widened(withHead(640, closed))).toBeCloseTo(1.2, 9);
    const { verdict, remedies } = check(withHead(640, closed), 'head-through-neck');
    expect(verdict).toBe('fails');
    expect(remedies).toContainEqual(expect.objectContaining({ code: 'open-neck', change: { opening: 'shoulder' } }));
  });
});
