/** Common practice, no source: what makers reckon with, checked through the advice. Inches as makers say them. */
import { describe, expect, it } from 'vitest';
import { rowBodyMeasures, sizeTable } from '#body';
import { adviceOn, check, fabricOf, mm, womanWith } from '../support/fit-samples.ts';

const inches = (count: number): number => count * 25.4;
const ORDINARY = 3;
/** What the folds add to a flat girth over the mid girth, a mm of thickness. */
const FOLDS = 4 - Math.PI;

describe('a drop shoulder 17 in wide with a sleeve of 19 in', () => {
  // Panel 17 in: the chest that gives it with no ease is 34 in + (4 − π)t.
  const body = womanWith({
    'chest-girth': inches(34) + FOLDS * ORDINARY,
    'hip-girth': inches(30),
    'nape-to-cuff': inches(27.5),
  });
  const advice = adviceOn({ body, fabric: fabricOf(ORDINARY), design: { ease: { mm: 0 } } });

  it('has a neck to cuff of 27½ in: half of 17 and 19', () => {
    expect(mm(advice, 'back/width')).toBeCloseTo(inches(17), 6);
    expect(mm(advice, 'sleeve/sleeve-length')).toBeCloseTo(inches(19), 6);
    expect(mm(advice, 'neck-to-cuff')).toBeCloseTo(inches(27.5), 6);
  });

  it('which is a small adult’s: between the middles of the women’s XS and S', () => {
    const { rows } = sizeTable('craft-yarn-council-woman');
    const middle = (size: string): number =>
      rowBodyMeasures(rows.find((row) => row.size === size)!).find(({ name }) => name === 'nape-to-cuff')!.value;
    expect(inches(27.5)).toBeGreaterThanOrEqual(middle('XS'));
    expect(inches(27.5)).toBeLessThanOrEqual(middle('S'));
  });
});

it('a cropped sweater of 2 in rib, 6 in plain and an 8 in V is within 1½ in of a small adult’s back waist', () => {
  // Women’s S: back waist 17 in; cropped ends at the waist.
  const advice = adviceOn({ body: womanWith({ 'back-waist-length': inches(17) }), design: { length: 'cropped' } });
  expect(Math.abs(mm(advice, 'centre-back-length') - inches(2 + 6 + 8))).toBeLessThanOrEqual(inches(1.5));
});

it.each([1, 1.25, 1.5])('a band of %s in along both edges narrows a V by twice that', (band) => {
  const advice = adviceOn({ design: { neckline: 'v', bandMm: inches(band) } });
  expect(mm(advice, 'back/neck-width') - mm(advice, 'neck-width')).toBeCloseTo(2 * inches(band), 6);
});

it('a sleeve may grow from 9½ in at the wrist to 14 in at the top', () => {
  const rules = {
    wrist: inches(9.5) + FOLDS * ORDINARY - 10 - 0.15 * 75,
    arm: inches(14) + FOLDS * ORDINARY - 0.5 * 75,
  };
  const body = womanWith({ 'wrist-girth': rules.wrist, 'upper-arm-girth': rules.arm });
  const advice = adviceOn({ body, fabric: fabricOf(ORDINARY), design: { construction: 'set-in' } });
  expect(mm(advice, 'sleeve/cuff-width')).toBeCloseTo(inches(9.5), 6);
  expect(mm(advice, 'sleeve/sleeve-top-width')).toBeCloseTo(inches(14), 6);
  expect(check(advice, 'sleeve-taper').verdict).toBe('fine');
});

it('the same flat width wears smaller in a very thick yarn', () => {
  const flat = 1040;
  const roomOf = (thickness: number): number => {
    const advice = adviceOn({
      fabric: fabricOf(thickness),
      design: { length: 'cropped', ease: { mm: flat - 940 - 4 * (thickness - ORDINARY) } },
    });
    expect(mm(advice, 'chest-width')).toBeCloseTo(flat / 2, 9);
    return advice.design.ease.room!;
  };
  // Each mm of thickness takes 4 mm of the room: F = I + 4t.
  expect(roomOf(ORDINARY) - roomOf(9)).toBeCloseTo(24, 9);
});
