import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS } from '../body-dimension.ts';
import type { Body } from '../body.ts';
import { loadBodyModel } from '../model/load-body-model.ts';
import { resolveBody } from '../resolve-body.ts';
import type { Observation } from './observation.ts';
import { resolveWithEvidence } from './resolve-with-evidence.ts';

const model = await loadBodyModel();
const ease = { name: 'grey', mean: 75, sd: 14.4 };
const chestOf = (observed: number): Observation => ({
  id: 'chest-width',
  source: 'grey',
  dimensions: { 'chest-girth': 1 },
  hidden: { grey: 1 },
  constant: 0,
  observed,
  tau: 0,
  u: 17,
  anchors: 'grey',
});
const body = (figure: Body['figure'], ageYears: number | null, ...measures: Body['measures']): Body => ({
  figure,
  ageYears,
  measures,
});
const of = (who: Body, ...observations: Observation[]) =>
  resolveWithEvidence(who, { hidden: [ease], observations }, model);

describe('a body with evidence', () => {
  it('of a woman has every dimension, and says what it is from', () => {
    const { profile, joint } = of(body('woman', 40), chestOf(1000));
    expect(Object.keys(profile.values)).toEqual(BODY_DIMENSIONS);
    expect(profile.missing).toEqual({});
    expect(profile.values['chest-girth']!.value).toBeCloseTo(925, -1);
    expect(profile.values['hip-girth']).toMatchObject({
      how: 'estimated',
      from: { code: 'evidence', params: { known: [], sources: ['grey'], version: model.coefficients.version } },
    });
    expect(profile.covariance!.names).toEqual(BODY_DIMENSIONS);
    expect(joint.values['grey']!.u).toBeGreaterThan(0);
  });

  it('moves a measure towards the sweater, and keeps how it was measured', () => {
    const taken = { name: 'chest-girth', value: 910, how: 'home' } as const;
    const { profile } = of(body('woman', 40, taken), chestOf(1000));
    const { value, u, how, from } = profile.values['chest-girth']!;
    expect(value).toBeGreaterThan(910);
    expect(value).toBeLessThan(925);
    expect(u).toBeLessThan(15);
    expect([how, from.code]).toEqual(['home', 'measured']);
  });

  it('of a child starts from its size', () => {
    const who = body('child', 6);
    const { profile } = of(who, chestOf(720));
    const before = resolveBody(who, { estimate: true }).values['chest-girth']!;
    expect(profile.values['chest-girth']!.value).toBeGreaterThan(before.value);
    expect(profile.values['chest-girth']!.value).toBeLessThan(645);
    expect(profile.values['chest-girth']!.u).toBeLessThan(before.u);
    expect(profile.values['neck-base-girth']!.value).toBeGreaterThan(110 + 0.285 * before.value);
    expect(profile.missing.stature).toEqual({ code: 'not-published', params: { figure: 'child' } });
  });

  it('of a child of whom nothing else is known starts from the size that its sweater leads to', () => {
    const { profile } = of(body('child', null), chestOf(710));
    expect(profile.values['chest-girth']!.value).toBeCloseTo(635, 0);
    expect(profile.values['chest-girth']!.u).toBeGreaterThan(15);
    expect(profile.values['across-back']!.value).toBeCloseTo(10.25 * 25.4, 0);
    expect(profile.values['head-girth']!.value).toBeGreaterThan(500);
  });

  it('asks where the sweater contradicts the tape', () => {
    const { contradictions } = of(body('child', 6, { name: 'chest-girth', value: 635, how: 'home' }), chestOf(900));
    expect(contradictions).toMatchObject([{ between: 'tape', observation: { id: 'chest-width' } }]);
  });
});
