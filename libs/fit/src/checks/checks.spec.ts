import { describe, expect, it } from 'vitest';
import { adviceOn, check, made, type Differs } from '../../../../tests/support/fit-samples.ts';
import { CHECKS, type CheckName } from '../messages/advice.ts';
import { CHECK_RULES } from './index.ts';

const applying = (differs: Differs = {}): CheckName[] =>
  adviceOn(differs)
    .checks.filter(({ verdict }) => verdict !== 'n/a')
    .map(({ check }) => check);

describe('the checks', () => {
  it('are the closed list, each once, in its order', () => {
    expect(CHECK_RULES.map((rule) => rule.check)).toEqual([...CHECKS]);
    expect(adviceOn().checks.map((each) => each.check)).toEqual([...CHECKS]);
  });

  it('each name two wishes and the dimension where they would collide', () => {
    for (const { wishes, dimension } of CHECK_RULES) {
      expect(new Set(wishes).size).toBe(2);
      expect(dimension).toMatch(/^[a-z-]+$/);
    }
  });
});

describe('a check applies', () => {
  it('to a drop-shoulder pullover, to its hip where it reaches it', () => {
    const all = applying();
    expect(all).not.toContain('under-the-arm');
    expect(all).not.toContain('raglan-slope');
    expect(all).not.toContain('negative-ease');
    expect(all).toContain('hip');
    expect(applying({ design: { length: 'cropped' } })).not.toContain('hip');
  });

  it('to what is pulled on: a cardigan opens', () => {
    const cardigan = applying({ design: { silhouette: 'cardigan' } });
    for (const name of ['head-through-neck', 'over-the-shoulders']) expect(cardigan).not.toContain(name);
  });

  it('to sleeves, which a vest has not', () => {
    const vest = applying({ design: { silhouette: 'vest', construction: 'set-in' } });
    const ofSleeves = [
      'hand-through-cuff',
      'cuff-stays',
      'upper-arm',
      'sleeve-below-underarm',
      'under-the-arm',
      'along-the-top',
      'sleeve-taper',
    ];
    for (const name of ofSleeves) expect(vest).not.toContain(name);
    expect(vest).toContain('armhole');
  });

  it('to a cap or a raglan, under the arm and along the top', () => {
    for (const construction of ['set-in', 'raglan'] as const)
      expect(applying({ design: { construction } })).toEqual(
        expect.arrayContaining(['under-the-arm', 'along-the-top']),
      );
    for (const construction of ['drop-shoulder', 'squared-drop'] as const)
      expect(applying({ design: { construction } })).not.toContain('along-the-top');
  });

  it('to an armhole, which a raglan has not', () => {
    expect(applying({ design: { construction: 'raglan' } })).not.toContain('armhole');
  });

  it('to a V’s point, to a garment smaller than the body, to seams and reach of what is made', () => {
    expect(applying({ design: { neckline: 'v' } })).toContain('neck-depth');
    expect(applying({ design: { ease: { mm: -75 } } })).toContain('negative-ease');
    expect(applying()).not.toContain('seam');
    expect(applying({ made: [made('back/width', 500), made('front/width', 505)] })).toContain('seam');
    expect(applying({ made: [made('sleeve/sleeve-length', 480)] })).toContain('nape-to-cuff');
  });
});

describe('a comfort check', () => {
  /** A V 300 deep, the bust line at 184 + 50 + 371/18. */
  it('is poor at worst, and no collision', () => {
    const cropped = { design: { neckline: 'v', frontNeckDepthMm: 300 } } as const;
    const advice = adviceOn(cropped);
    expect(check(advice, 'neck-depth')).toMatchObject({
      verdict: 'poor',
      margin: expect.closeTo(234 + 371 / 18 - 300, 9),
    });
    expect(advice.collisions).toEqual([]);
  });
});
