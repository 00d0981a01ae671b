import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plannedRequest } from '../../../../tests/support/fit-requests.ts';
import {
  adviceOn,
  check,
  dimension,
  fabricOf,
  made,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import { newlyFailing } from '../../../../tests/support/newly-failing.ts';
import type { Advice } from '../messages/advice.ts';
import { advise } from '../advice/advise.ts';
import type { FitRequest } from '../inputs/fit-request.ts';
import { rulesWith } from '../design/rules.ts';

/** How a request is changed so that one dimension is so large; the three numbers of a neck are chosen together. */
const RESIZED: Readonly<Record<string, (request: FitRequest, advice: Advice, to: number) => FitRequest>> = {
  'band-depth': (request, _, bandMm) => ({ ...request, design: { ...request.design, bandMm } }),
  'rib-depth': (request, _, ribMm) => ({ ...request, design: { ...request.design, ribMm } }),
  'neck-width': (request, advice, to) => withNeck(request, advice, { neckWidthMm: to }),
  'front-neck-depth': (request, advice, to) => withNeck(request, advice, { frontNeckDepthMm: to }),
  'back-neck-depth': (request, advice, to) => withNeck(request, advice, { backNeckDepthMm: to }),
  'centre-back-length': (request, _, to) => ({
    ...request,
    design: { ...request.design, length: 'custom', customLengthMm: to },
  }),
  ...Object.fromEntries(
    [
      'back/width',
      'back/armhole-depth',
      'back/raglan-depth',
      'back/body-to-underarm',
      'sleeve/cuff-width',
      'sleeve/sleeve-length',
      'sleeve/sleeve-top-width',
    ].map((path) => [
      path,
      (request: FitRequest, _: Advice, to: number): FitRequest => ({ ...request, made: [made(path, to)] }),
    ]),
  ),
};

function withNeck(request: FitRequest, advice: Advice, own: Partial<FitRequest['design']>): FitRequest {
  const value = (name: string) => dimension(advice, name).value;
  const neck = {
    neckWidthMm: value('neck-width'),
    frontNeckDepthMm: value('front-neck-depth'),
    backNeckDepthMm: value('back-neck-depth'),
  };
  return { ...request, design: { ...request.design, ...neck, ...own } };
}

const has = (advice: Advice, path: string): boolean => {
  const [first, name] = path.split('/');
  const among = name === undefined ? advice.assembled : advice.pieces.find(({ piece }) => piece === first)?.dimensions;
  return among?.some((each) => each.name === (name ?? first) && each.value !== null) ?? false;
};

describe('a sleeve’s top', () => {
  /** A fabric that stretches far, so that no check draws anything in. */
  it.each([
    { category: 'very-close', share: 0.2 },
    { category: 'classic', share: 0.35 },
  ] as const)('may be rounded down by $share of what the $category ease may', ({ category, share }) => {
    const fabric = fabricOf(3, { stretch: { across: 2, along: 2 } });
    const advice = adviceOn({ fabric, design: { construction: 'set-in', ease: { category, place: 0.5 } } });
    const { value, low } = dimension(advice, 'sleeve/sleeve-top-width');
    const down = advice.design.ease.tableTerms! - rulesWith({})[`ease-${category}-from`];
    expect(value! - low!).toBeCloseTo(share * down, 6);
  });
});

/** A squared drop without an inset is a drop shoulder, and a length that comes to reach the hip, or no more, another design. */
const kindOf = (advice: Advice): string => `${advice.design.construction} ${check(advice, 'hip').verdict === 'n/a'}`;

describe('a dimension rounded to its low or high', () => {
  it('keeps every check that held, the uncertainty apart', () => {
    fc.assert(
      fc.property(plannedRequest, fc.constantFrom(...Object.keys(RESIZED)), (request, path) => {
        const before = advise(request);
        fc.pre(has(before, path));
        const { low, high } = dimension(before, path);
        for (const to of [low!, high!]) {
          const after = advise(RESIZED[path]!(request, before, to));
          if (kindOf(before) !== kindOf(after)) continue;
          expect(newlyFailing(before, after), `${path} ${to}`).toEqual([]);
        }
      }),
      { numRuns: 250 },
    );
  });
});

describe('the range of the plain request', () => {
  const range = (path: string, differs: Differs = {}) => {
    const { low, value, high } = dimension(adviceOn(differs), path);
    return [low! - value!, high! - value!].map((by) => expect.closeTo(by, 6));
  };

  /** Over the shoulders 1000 of 1003: 3 of girth down, 1.5 of width. Up to 100 of ease: 25 of girth. */
  it('of the width: down as far as it still goes on, up to the end of the band', () => {
    expect([-1.5, 12.5]).toEqual(range('chest-width'));
    expect([-1.5, 12.5]).toEqual(range('back/width'));
  });

  it('of a length: 10 either way', () => {
    expect([-10, 10]).toEqual(range('centre-back-length'));
    expect([-10, 10]).toEqual(range('sleeve-length'));
  });

  /** Opening 385.0 × 1.5 = 577.5 for a head of 561: 11 of the opening may go, less than 10 of the width does. */
  it('of a neck that passes easily: 10 either way', () => {
    expect([-10, 10]).toEqual(range('back-neck-depth'));
  });

  /** A narrow back carries so wide a neck and no wider; a narrower one it carries too, until the head does not pass. */
  it('of a neck kept at what the shoulders carry: down, and not up', () => {
    const body = womanWith({ 'across-back': 250 });
    const design = { construction: 'set-in', ease: { mm: 0 } } as const;
    const { checks } = adviceOn({ body, design });
    expect(checks.find(({ check }) => check === 'neck-on-shoulders')!.margin).toBeCloseTo(0, 9);
    const { low, value, high } = dimension(adviceOn({ body, design }), 'neck-width');
    expect(low! - value!).toBeLessThan(-4);
    expect(high! - value!).toBeCloseTo(0, 6);
  });

  it('of what is made: none', () => {
    const differs = { made: [made('back/width', 510)] };
    expect([0, 0]).toEqual(range('chest-width', differs));
    expect([0, 0]).toEqual(range('front/width', differs));
  });

  /** The wrist takes 0.15 of the ease: −25 × 0.15 down; the hand of 212.8 leaves (253.875 − 212.8)/1.5 = 27. */
  it('of a cuff: by its share of the band, for the hand leaves more', () => {
    expect([-3.75, 3.75]).toEqual(range('sleeve/cuff-width'));
  });

  /** A hand of 226 needs 253.12 of 253.875: 0.755/1.5 of girth may go. */
  it('of a cuff: down to a larger hand', () => {
    expect([-(253.875 - 1.12 * 226) / 1.5, 3.75]).toEqual(
      range('sleeve/cuff-width', { body: womanWith({ 'hand-girth': 226 }) }),
    );
  });
});

describe('a check that fails already', () => {
  /** Shoulders of 1100 need 1020 of 1003 in a fabric that does not stretch; the hip needs 990. */
  it('draws nothing in, and is told as a collision', () => {
    const body = womanWith({ 'shoulder-girth': 1100 });
    const advice = adviceOn({ body, fabric: fabricOf(3, { stretch: { across: 0, along: 0 } }) });
    const { low, value, high } = dimension(advice, 'back/width');
    // The hip draws it in to 13 of girth, where the shoulders would have left nothing.
    expect([low! - value!, high! - value!]).toEqual([expect.closeTo(-6.5, 6), expect.closeTo(12.5, 6)]);
    expect(advice.collisions).toEqual([{ dimension: 'chest-width', wishes: ['goes-over-shoulders', 'close-ease'] }]);
  });
});
