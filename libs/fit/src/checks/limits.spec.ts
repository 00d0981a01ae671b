import { describe, expect, it } from 'vitest';
import {
  adviceOn,
  bodyOf,
  check,
  fabricOf,
  made,
  WOMAN,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import type { CheckName } from '../messages/advice.ts';

/** The plain request in numbers, mm: t 3, E 75, F 1015, A 224.5, cuff 181.25 flat; the main fabric, unmeasured, gives 0.1. */
const PANEL = (1015 - (4 - Math.PI) * 3) / 2;
const CREW = 371 / Math.PI + 25;
const CUFF_PIECE = 181.25 - (4 - Math.PI) * 3;

function needAndHave(name: CheckName, differs: Differs = {}): readonly [number | undefined, number | undefined] {
  const { need, have } = check(adviceOn(differs), name);
  return [need, have];
}
const near = (...pair: readonly [number, number]) => pair.map((x) => expect.closeTo(x, 9));

describe('what a check needs and has', () => {
  it.each<[CheckName, number, number, string]>([
    ['hand-through-cuff', 1.12 * 190, 169.25 * 1.5, 'hand tucked in; inner girth 181.25 − 12, rib stretched by half'],
    ['cuff-stays', 169.25, 1.08 * 190, 'the thumb’s root holds the cuff'],
    ['upper-arm', 280, 2 * 224.5 - 12, 'a drop lies flat at its seam: 2A − 4t'],
    ['armhole', 400, 2 * 224.5 - 3 * Math.PI, '2A − πt'],
    ['over-the-shoulders', 970, 1003 * 1.1, '940 + (1060 − 940)/4 through I = 1015 − 12, stretched'],
    ['hip', 990, 1003 * 1.1, 'through the hem, stretched'],
    ['neck-on-shoulders', 30, (PANEL - CREW - 50) / 2, 'the shoulder is scarcer than the width'],
    ['body-below-underarm', 50 + 20, 587 + 371 / 18 - 224.5, 'rib and 20'],
    ['sleeve-below-underarm', 50 + 40, 743 - PANEL / 2, 'rib and 40'],
    ['front-and-back', 13, 25, '450 − 437'],
    [
      'sleeve-taper',
      (449 - CUFF_PIECE / 0.8) / 2 / (743 - PANEL / 2 - 50),
      0.5,
      '(top − G_a)/2 over what is above the rib',
    ],
  ])('%s: %d ≤ %d (%s)', (name, need, have) => {
    expect(needAndHave(name)).toEqual(near(need, have));
  });

  /** Across back 210 − 60 = 150 against a neck of 140: less to spare than the shoulders of a drop have. */
  it('neck on the shoulders: the width, where that is scarcer', () => {
    const differs = { body: womanWith({ 'across-back': 210 }), design: { neckWidthMm: 140 } };
    expect(needAndHave('neck-on-shoulders', differs)).toEqual(near(140, 150));
  });

  it('over a layer: its girth more to go through, at the arm where its sleeves reach', () => {
    const design = { layer: { thicknessMm: 2, u: 0, sleeves: 'short' } } as const;
    const girth = 2 * Math.PI * 2;
    expect(needAndHave('upper-arm', { design })[0]).toBeCloseTo(280 + girth, 9);
    expect(needAndHave('armhole', { design })[0]).toBeCloseTo(400 + girth, 9);
    expect(needAndHave('over-the-shoulders', { design })).toEqual(near(970 + girth, (1003 + girth) * 1.1));
    expect(needAndHave('hip', { design })[0]).toBeCloseTo(990 + girth, 9);
  });

  it.each([
    ['squared-drop', (PANEL - 404) / 4 + 214.5],
    ['drop-shoulder', 224.5],
  ] as const)('the armhole of a %s: its seam on both sides', (construction, seam) => {
    expect(needAndHave('armhole', { design: { construction } })[1]).toBeCloseTo(2 * seam - 3 * Math.PI, 9);
  });

  /** G − πt = F − 4t, F = 317.5. */
  it('a set-in’s upper arm: the sleeve’s inner girth', () => {
    expect(needAndHave('upper-arm', { design: { construction: 'set-in' } })[1]).toBeCloseTo(317.5 - 12, 9);
  });

  /** V 172.8 deep; scye 184 + 50 from the nape, and the nape lies 371/18 below the line between the high points. */
  it('a V’s point against the bust line', () => {
    const differs = { design: { neckline: 'v' }, fabric: fabricOf(3, { ribStretch: 4 }) } as const;
    expect(needAndHave('neck-depth', differs)).toEqual(near(172.8, 234 + 371 / 18));
  });

  /** |seam − (432 + 25 − (how far the garment's underarm lies below the body's))|; the latter A + f − d_b − 184. */
  it('under the arm, for a sleeve with a cap', () => {
    const advice = adviceOn({ design: { construction: 'set-in' } });
    const value = (name: string) => advice.assembled.find((each) => each.name === name)!.value!;
    const below = value('centre-back-length') - value('body-to-underarm') - 184;
    expect(check(advice, 'under-the-arm')).toMatchObject({
      need: expect.closeTo(Math.abs(value('underarm-seam') - (432 + 25 - below)), 9),
      have: 50,
    });
  });
});

describe('the stretch of the main fabric', () => {
  const stretchy = fabricOf(3, { stretch: { across: 0.4, along: 0 } });

  /** E = 0 < 50: usable is half of 0.4. F at the chest is 940; at the hip 990 + 0 governs the straight hem. */
  /** A = 184 + 8 + 25. */
  it('counts for a close fit, at arm and armhole', () => {
    const design = { ease: { mm: 0 } };
    expect(needAndHave('hip', { fabric: stretchy, design })[1]).toBeCloseTo((990 - 12) * 1.2, 9);
    expect(needAndHave('upper-arm', { fabric: stretchy, design })[1]).toBeCloseTo((2 * 217 - 12) * 1.2, 9);
    expect(needAndHave('armhole', { fabric: stretchy, design })[1]).toBeCloseTo((2 * 217 - 3 * Math.PI) * 1.2, 9);
  });

  it('counts over the shoulders and at the hip whatever the fit, and else not for a looser one', () => {
    expect(needAndHave('over-the-shoulders', { fabric: stretchy })[1]).toBeCloseTo(1003 * 1.2, 9);
    expect(needAndHave('hip', { fabric: stretchy })[1]).toBeCloseTo(1003 * 1.2, 9);
    expect(needAndHave('upper-arm', { fabric: stretchy })[1]).toBeCloseTo(2 * 224.5 - 12, 9);
    expect(needAndHave('armhole', { fabric: stretchy })[1]).toBeCloseTo(2 * 224.5 - 3 * Math.PI, 9);
  });

  /** F = 865 cropped, I = 853: 940/853 − 1 of 0.2. */
  it('must be there all the time where the garment is smaller than the body', () => {
    const differs = { fabric: stretchy, design: { ease: { mm: -75 }, length: 'cropped' } } as const;
    expect(needAndHave('negative-ease', differs)).toEqual(near(940 / 853 - 1, 0.2));
  });
});

/**
 * The sheet's numbers are fixed: the body's uncertainty is in the need, that of t (0.3) in the room inside, and a girth has 1 % of what there is
 * for the making.
 */
describe('how sure a check is', () => {
  const body = bodyOf(WOMAN, 'woman', {
    'chest-girth': 15,
    'hip-girth': 15,
    'upper-arm-girth': 17,
    'scye-girth': 17,
    'scye-depth': 10,
    'shoulder-girth': 20,
    'hand-girth': 5,
    'across-back': 10,
    'nape-to-cuff': 10,
    'underarm-length': 10,
    'front-waist-length': 10,
    'back-waist-length': 10,
  });
  const uOf = (name: CheckName, design: Differs['design'] = {}): number => check(adviceOn({ body, design }), name).u!;

  it.each<[CheckName, readonly number[], string]>([
    ['upper-arm', [17, 4 * 0.3, 4.37], 'the arm, the fold, 1 % of 437'],
    ['armhole', [17, 0.3 * Math.PI, 4.395752], 'the scye, the seam in the fabric, 1 % of 439.6'],
    ['hip', [15, 4.4 * 0.3, 11.033], 'the hip, the fold stretched, 1 % of 1103.3'],
    [
      'over-the-shoulders',
      [0.75 * 15, 0.25 * 20, 4.4 * 0.3, 11.033],
      'three quarters of the chest, one of the shoulders',
    ],
    ['hand-through-cuff', [1.12 * 5, 6 * 0.3, 2.53875], 'the hand tucked in, the fold stretched by half, 1 % of 253.9'],
    ['cuff-stays', [1.08 * 5, 4 * 0.3, 1.6925], 'the hand, the fold, 1 % of the cuff’s 169.25'],
    ['front-and-back', [10, 10], 'both waists'],
    ['sleeve-below-underarm', [0], 'lengths of the sheet alone'],
    ['body-below-underarm', [0], 'lengths of the sheet alone'],
    ['sleeve-taper', [0], 'numbers of the sheet alone'],
  ])('%s: %j (%s)', (name, parts) => {
    expect(uOf(name)).toBeCloseTo(Math.hypot(...parts), 5);
  });

  it('of a sleeve’s two ways: what was measured for each', () => {
    expect(uOf('along-the-top', { construction: 'set-in' })).toBeCloseTo(10, 9);
    expect(uOf('under-the-arm', { construction: 'set-in' })).toBeCloseTo(Math.hypot(10, 10), 9);
  });
});

describe('the worst of several seams', () => {
  /** Panels 30 apart of 15.6; armhole 2 × 250 against 490: 10 of 15. The panels are worse. */
  it('is told', () => {
    const pieces = [
      made('back/width', 520),
      made('front/width', 490),
      made('back/armhole-depth', 250),
      made('sleeve/sleeve-top-width', 490),
    ];
    expect(needAndHave('seam', { made: pieces })).toEqual(near(30, 15.6));
  });
});
