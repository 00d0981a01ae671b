import { expect, it } from 'vitest';
import { bodyOf, garmentOf } from '../../../../tests/support/fit-samples.ts';
import { rulesWith } from '../design/rules.ts';
import { favouritesOf } from './favourites.ts';
import type { ResolvedWearer } from './resolve-wearer.ts';
import type { WornGarment } from './worn-garment.ts';

const wearing = (...garments: readonly WornGarment[]): ResolvedWearer => ({
  body: bodyOf({}),
  garments,
  comparisons: [],
  contradictions: [],
});
const sweater = (ease: number, rest: Partial<WornGarment> = {}) =>
  garmentOf({ 'chest-width': 500 }, { ease: { value: ease, u: 10, covariances: {} }, ...rest });
const of = (...garments: readonly WornGarment[]) => favouritesOf(wearing(...garments), rulesWith({}));

it('is a choice from two on', () => {
  expect(of()).toBeNull();
  expect(of(sweater(60))).toBeNull();
});

/** (75 + 90 + 120)/3 = 95; (60² + 20² + 5² + 25²)/3 = 1550. */
it('is the mean of their eases, with what sweaters usually have as one of them', () => {
  expect(of(sweater(90), sweater(120))).toEqual({ count: 2, mean: 95, sd: expect.closeTo(Math.sqrt(1550), 9) });
});

it('leaves out what does not wear right at the chest, and what has no chest width', () => {
  const others = [sweater(0, { wears: { chest: 'close' } }), sweater(300, { wears: { chest: 'roomy' } })];
  const short = garmentOf({ 'cuff-width': 100 });
  const right = sweater(120, { wears: { chest: 'right', cuff: 'close' } });
  expect(of(sweater(90), right, short, ...others)?.count).toBe(2);
});

/** Half of an adult's size: every ease of the rules is three quarters of it. (56.25 + 40 + 40)/3. */
it('is a child’s by its size', () => {
  const body = bodyOf({ 'chest-girth': 460 }, 'child');
  const { mean } = favouritesOf({ ...wearing(sweater(40), sweater(40)), body }, rulesWith({}))!;
  expect(mean).toBeCloseTo((75 * 0.75 + 80) / 3, 9);
});
