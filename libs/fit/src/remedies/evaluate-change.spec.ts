import { describe, expect, it } from 'vitest';
import { fabricOf, requestOf, womanWith, type Differs } from '../../../../tests/support/fit-samples.ts';
import type { CheckName } from '../messages/advice.ts';
import type { Change } from '../checks/check.ts';
import { compute } from '../evaluation/compute.ts';
import { evaluateChange, type Outcome } from './evaluate-change.ts';

/** What a change does to a check of the plain pullover, or of what differs from it. */
function outcome(change: Change, name: CheckName, differs: Differs = {}): Outcome | null {
  const computed = compute(requestOf(differs));
  const { traced } = computed.model.checks.find(({ rule }) => rule.check === name)!;
  return evaluateChange(change, traced!, computed);
}

/** A fabric that was pulled and gives nothing: σ = 20 at the chest and at the hip, so the room is 1015 + 20 − 12 = 1023. */
const UNYIELDING = fabricOf(3, { stretch: { across: 0, along: 0 } });

describe('the outcome of a change', () => {
  /** Inside the cuff 2·95 − 4·3 = 178, times 1.5 for the rib, less 1.12·190 = 212.8. */
  it('has the margin that its check then has', () => {
    expect(outcome({ cuffWidthMm: 95 }, 'hand-through-cuff')).toEqual({
      margin: expect.closeTo(1.5 * 178 - 212.8, 6),
      spoilt: 0,
      tightened: 0,
    });
  });

  /** A cuff of 2·112 − 12 = 212 inside no longer stays above a hand of 190, which holds 1.08 times as much. */
  it('counts the checks of comfort that it spoils', () => {
    expect(outcome({ cuffWidthMm: 112 }, 'hand-through-cuff')).toMatchObject({ spoilt: 1 });
  });

  /** Over the shoulders 1022 of 940 + (1240 − 940)/4 = 1015: less than before, and within 1.645·10 of failing; at the hip 42 are left, and sure. */
  it('counts the other checks that it makes less certain', () => {
    const body = womanWith({ 'hip-girth': 980, 'shoulder-girth': 1240 });
    expect(outcome({ easeMm: 74 }, 'hand-through-cuff', { body, fabric: UNYIELDING })).toMatchObject({
      spoilt: 0,
      tightened: 1,
    });
  });

  /** A back 450 long ends 13 below the waist. */
  it('has all the margin in the world where its check no longer applies', () => {
    expect(outcome({ length: 'custom', customLengthMm: 450 }, 'hip')).toMatchObject({ margin: Infinity });
  });
});

describe('a change that ends an opening', () => {
  /** A head of 640 passes no crew in a rib that gives nothing, even half larger (577): it opens. A neck of 220, 170 and 60 is 718 round. */
  it('loses no number by it', () => {
    const differs: Differs = { body: womanWith({ 'head-girth': 640 }), fabric: fabricOf(3, { ribStretch: 0 }) };
    expect(compute(requestOf(differs)).model.garment.opening).not.toBeNull();
    const own = { neckWidthMm: 220, frontNeckDepthMm: 170, backNeckDepthMm: 60 };
    expect(outcome(own, 'head-through-neck', differs)).not.toBeNull();
  });
});

describe('a change is refused', () => {
  /** An ease of 20 leaves 968 of the 940 + (1180 − 940)/4 = 1000 that go over the shoulders. */
  it('where another check no longer holds', () => {
    const differs = { body: womanWith({ 'hip-girth': 930, 'shoulder-girth': 1180 }), fabric: UNYIELDING };
    expect(outcome({ easeMm: 72 }, 'hand-through-cuff', differs)).not.toBeNull();
    expect(outcome({ easeMm: 20 }, 'hand-through-cuff', differs)).toBeNull();
  });

  /** Half a front's neck is (w + 50)/2 wide, less a front band of 60: 15 for w = 100, and 15 less than nothing for w = 40. */
  it('where a dimension would be less than nothing', () => {
    const design = { silhouette: 'cardigan', frontBandMm: 60, overlapMm: 0, frontNeckDepthMm: 200 } as const;
    expect(outcome({ neckWidthMm: 100 }, 'hand-through-cuff', { design })).not.toBeNull();
    expect(outcome({ neckWidthMm: 40 }, 'hand-through-cuff', { design })).toBeNull();
  });

  /** A hem straight down from 1015 goes over the shoulders; down from a hip of 1100 + 25 it makes another body of it. */
  it('where a hip would come to set the width of the body', () => {
    const tapered = (hip: number): Differs => ({ body: womanWith({ 'hip-girth': hip }), design: { hem: 'tapered' } });
    expect(outcome({ hem: 'straight' }, 'over-the-shoulders', tapered(940))).toMatchObject({
      margin: expect.closeTo(1003 * 1.1 - 970, 6),
    });
    expect(outcome({ hem: 'straight' }, 'over-the-shoulders', tapered(1100))).toBeNull();
  });

  /** (p − 440)/4 for p = (940 + E − (4 − π)3)/2: 10.9 for an ease of 30, 9.7 for one of 20. */
  it('where a squared drop would no longer be one', () => {
    const differs: Differs = {
      body: womanWith({ 'across-back': 440, 'hip-girth': 930 }),
      fabric: fabricOf(3, { stretch: { across: 2, along: 2 } }),
      design: { construction: 'squared-drop' },
    };
    expect(outcome({ easeMm: 30 }, 'hand-through-cuff', differs)).not.toBeNull();
    expect(outcome({ easeMm: 20 }, 'hand-through-cuff', differs)).toBeNull();
  });

  /** Nothing goes over the head of a cardigan; but its neck goes round a neck of 371. */
  it('where a neck would be smaller than what it goes round', () => {
    const design = { silhouette: 'cardigan' } as const;
    expect(outcome({ neckWidthMm: 150 }, 'hand-through-cuff', { design })).not.toBeNull();
    expect(outcome({ neckWidthMm: 60, frontNeckDepthMm: 20 }, 'hand-through-cuff', { design })).toBeNull();
  });

  /** On the piece 195 + 25 lies above an underarm at 224.5, and 200 + 25 does not. */
  it('where a round neck would be cut deeper than the underarm', () => {
    expect(outcome({ frontNeckDepthMm: 195 }, 'head-through-neck')).not.toBeNull();
    expect(outcome({ frontNeckDepthMm: 200 }, 'head-through-neck')).toBeNull();
  });
});
