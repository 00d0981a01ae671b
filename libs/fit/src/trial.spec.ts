import { describe, expect, it } from 'vitest';
import { bodyOf, fabricOf, requestOf, WOMAN, womanWith, type Differs } from '../../../tests/support/fit-samples.ts';
import { CHECK_RULES } from './check-rules.ts';
import type { CheckName } from './advice.ts';
import { type Change, tried } from './trial.ts';
import { workOut } from './work-out.ts';

const outcome = (change: Change, name: CheckName, differs: Differs = {}) => {
  const request = requestOf(differs);
  const rule = CHECK_RULES.find(({ check }) => check === name)!;
  return tried(change, rule, request, workOut(request));
};

describe('a change that is tried', () => {
  /** A hip of 800 leaves the width to the chest: (940 + 63) − (940 + 1060)/2 = 3, and 10 more of ease. */
  it('tells what the check has to spare then', () => {
    const body = womanWith({ 'hip-girth': 800 });
    expect(outcome({ easeMm: 75 }, 'over-the-shoulders', { body })?.margin).toBeCloseTo(3, 9);
    expect(outcome({ easeMm: 85 }, 'over-the-shoulders', { body })?.margin).toBeCloseTo(13, 9);
  });

  it('takes a rule at the wearer’s size', () => {
    const child = bodyOf({ ...WOMAN, 'chest-girth': 460 }, 'child');
    const before = outcome({}, 'hand-through-cuff', { body: child })!.margin;
    // 10 more at κ = ½, stretched by a half.
    expect(outcome({ 'rules/wrist-room': 20 }, 'hand-through-cuff', { body: child })!.margin - before).toBeCloseTo(
      7.5,
      9,
    );
  });

  it('is none that makes another check fail', () => {
    const design = { neckWidthMm: 150, frontNeckDepthMm: 70, backNeckDepthMm: 20 };
    expect(outcome({ neckWidthMm: 155 }, 'head-through-neck', { design })).not.toBeNull();
    // The shoulders carry 404 − 60.
    expect(outcome({ neckWidthMm: 345 }, 'head-through-neck', { design })).toBeNull();
  });

  it('counts the comfort that it spoils', () => {
    const design = { neckline: 'v' } as const;
    expect(outcome({ frontNeckDepthMm: 200 }, 'head-through-neck', { design })?.spoilt).toBe(0);
    // The fullest part of the chest lies 184 + 50 + 371/18 below the back neck.
    expect(outcome({ frontNeckDepthMm: 260 }, 'head-through-neck', { design })?.spoilt).toBe(1);
  });

  it('is none that brings the hip into the width of the whole body', () => {
    const differs = { body: womanWith({ 'hip-girth': 1180 }), design: { length: 'cropped' } } as const;
    expect(outcome({ length: 'custom', customLengthMm: 530 }, 'body-below-underarm', differs)).not.toBeNull();
    expect(outcome({ length: 'custom', customLengthMm: 540 }, 'body-below-underarm', differs)).toBeNull();
  });

  /** (506.2 − 480)/4 = 6.6 of 10: a drop shoulder. With 40 more of ease (526.2 − 480)/4 = 11.6. */
  it('is none that makes a squared drop come or go', () => {
    const body = womanWith({ 'across-back': 480, 'hip-girth': 800 });
    const design = { construction: 'squared-drop' } as const;
    const fabric = fabricOf(3, { stretch: { across: 0.1, along: 0 } });
    expect(outcome({ easeMm: 80 }, 'over-the-shoulders', { body, design, fabric })).not.toBeNull();
    expect(outcome({ easeMm: 115 }, 'over-the-shoulders', { body, design, fabric })).toBeNull();
    const with115 = { ...design, ease: { mm: 115 } };
    expect(outcome({ easeMm: 120 }, 'over-the-shoulders', { body, design: with115, fabric })).not.toBeNull();
    expect(outcome({ easeMm: 80 }, 'over-the-shoulders', { body, design: with115, fabric })).toBeNull();
  });

  it('may come to fit closely no more, or to be wider than its hip', () => {
    const close = { ease: { mm: -50 }, length: 'cropped' } as const;
    const fabric = fabricOf(3, { stretch: { across: 0.4, along: 0 } });
    expect(outcome({ easeMm: 75 }, 'over-the-shoulders', { design: close, fabric })).not.toBeNull();
    const body = womanWith({ 'hip-girth': 1000, 'shoulder-girth': 1200 });
    expect(outcome({ easeMm: 150 }, 'over-the-shoulders', { body })?.margin).toBeCloseTo(940 + 138 - 1070, 9);
  });
});
