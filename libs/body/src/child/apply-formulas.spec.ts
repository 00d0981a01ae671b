import { describe, expect, it } from 'vitest';
import type { ProfileValue } from '../body-profile.ts';
import { applyFormulas } from './apply-formulas.ts';
import { childFormulas } from './child-formulas.ts';

const measured = (value: number, u: number): ProfileValue => ({
  value,
  u,
  how: 'home',
  from: { code: 'measured', params: { how: 'home' } },
});

describe('applyFormulas', () => {
  it('works a 6-year-old out from chest, scye depth and age', () => {
    const { values } = applyFormulas(
      { 'chest-girth': measured(635, 15), 'scye-depth': measured(127, 10) },
      childFormulas('child', 6),
    );
    expect(values['neck-base-girth']!.value).toBeCloseTo(290.975, 9); // 110 + 0.285 × 635
    expect(values['wrist-girth']!.value).toBeCloseTo(127.2, 9); // 108 + 3.2 × 6
    expect(values['hand-girth']!.value).toBeCloseTo(152.64, 9); // 1.2 × 127.2
    expect(values['shoulder-girth']!.value).toBeCloseTo(717.55, 9); // 1.13 × 635
    expect(values['scye-girth']!.value).toBe(254); // 2 × 127
    expect(values['head-girth']!.value).toBe(511);
    expect(values['nape-to-cuff']).toBeUndefined(); // no across back, no arm
    expect(values['neck-base-girth']!.u).toBeCloseTo(Math.hypot(14.4, 0.285 * 15), 9);
  });

  /** Of u² the formula's own part is what is left without the covariance with what it rests on. */
  it.each([1, 5, 8, 12])('is as unsure of its own whatever it rests on: a wrist ± %d', (u) => {
    const { values, covariance } = applyFormulas({ 'wrist-girth': measured(127, u) }, childFormulas('child', 6));
    const { names, matrix } = covariance!;
    const shared = matrix[names.indexOf('hand-girth')]![names.indexOf('wrist-girth')]!;
    expect(values['hand-girth']!.u ** 2 - (shared / u) ** 2).toBeCloseTo(5 ** 2, 9);
  });

  it('gives the covariance of what hangs together', () => {
    const { values, covariance } = applyFormulas({ 'chest-girth': measured(635, 15) }, childFormulas('child', 6));
    const { names, matrix } = covariance!;
    const of = (a: (typeof names)[number], b: (typeof names)[number]) => matrix[names.indexOf(a)]![names.indexOf(b)]!;
    names.forEach((name) => expect(of(name, name)).toBeCloseTo(values[name]!.u ** 2, 9));
    expect(of('chest-girth', 'neck-base-girth')).toBeCloseTo(0.285 * 225, 9);
    expect(of('neck-base-girth', 'shoulder-girth')).toBeCloseTo(0.285 * 1.13 * 225, 9);
    expect(of('wrist-girth', 'hand-girth')).toBeCloseTo(1.2 * 64, 9);
    expect(of('wrist-girth', 'neck-base-girth')).toBe(0);
  });

  it('leaves what was measured alone', () => {
    const known = { 'wrist-girth': measured(150, 5) };
    const { values } = applyFormulas(known, childFormulas('child', 6));
    expect(values['wrist-girth']).toBe(known['wrist-girth']);
    expect(values['hand-girth']!.value).toBeCloseTo(180, 9); // 1.2 × the measured 150
  });
});
