import { describe, expect, it } from 'vitest';
import { knownLogs } from './known-logs.ts';
import { loadBodyModel } from './load-body-model.ts';
import { contradictionOf, farOff, posteriorOf, priorsOf, sexesOf } from './posterior.ts';

const { coefficients } = await loadBodyModel();
const { dimensions } = coefficients;
const priors = priorsOf(coefficients, 'anyone');
const known = knownLogs(dimensions, [
  { name: 'stature', value: 1720, u: 8 },
  { name: 'chest-girth', value: 980, u: 12 },
]);
const rest = [dimensions.indexOf('wrist-girth'), dimensions.indexOf('scye-depth')];
const of = (figure: 'woman' | 'man' | 'unsaid') => posteriorOf(priors, { figure, ageYears: 40 }, known, rest);

describe('values that contradict one another', () => {
  /** n + 3·√(2n): 4 + 3·√8 for four degrees of freedom. */
  it('lie further off than agreeing values seldom do', () => {
    expect(farOff(2)).toBeCloseTo(8, 12);
    expect(farOff(8)).toBeCloseTo(20, 12);
  });

  it('widen the variances in proportion beyond that, and only then', () => {
    expect([contradictionOf(8, 2), contradictionOf(3, 2), contradictionOf(0, 2)]).toEqual([1, 1, 1]);
    expect(contradictionOf(24, 2)).toBeCloseTo(3, 12);
    expect(contradictionOf(40, 8)).toBeCloseTo(2, 12);
    expect([contradictionOf(1000, 0), contradictionOf(1000, -1)]).toEqual([1, 1]);
  });
});

describe('a posterior', () => {
  it('of a sex that is said is that sex’s', () => {
    expect(sexesOf('unsaid')).toEqual(['woman', 'man']);
    expect(sexesOf('man')).toEqual(['man']);
    expect(of('woman').weights).toEqual({ woman: 1, man: 0 });
    expect(of('man').weights).toEqual({ woman: 0, man: 1 });
  });

  it('of a sex that is not said is both, each by its weight', () => {
    const [woman, man, both] = [of('woman'), of('man'), of('unsaid')];
    const { weights } = both;
    expect(weights.woman + weights.man).toBeCloseTo(1, 12);
    const mixed = (a: number, b: number) => weights.woman * a + weights.man * b;
    expect(both.rest).toEqual(rest);
    expect(both.b).toBeCloseTo(mixed(woman.b, man.b), 12);
    expect(both.distance).toBe(Math.min(woman.distance, man.distance));
    expect(both.contradiction).toBe(1);
    both.mean.forEach((value, i) => expect(value).toBeCloseTo(mixed(woman.mean[i]!, man.mean[i]!), 12));
    both.gain.forEach((value, i) => expect(value).toBeCloseTo(mixed(woman.gain[i]!, man.gain[i]!), 12));
  });

  it('of values that contradict one another is the same, its variances so many times wider', () => {
    const typed = [
      { name: 'chest-girth', value: 800, u: 8 },
      { name: 'hip-girth', value: 1500, u: 8 },
      { name: 'stature', value: 1650, u: 5 },
    ] as const;
    const found = posteriorOf(priors, { figure: 'woman', ageYears: 40 }, knownLogs(dimensions, typed), rest);
    expect(found.contradiction).toBeGreaterThan(1);
    // Without the chest nothing contradicts the hip, and less known is surer.
    const fewer = posteriorOf(priors, { figure: 'woman', ageYears: 40 }, knownLogs(dimensions, typed.slice(1)), rest);
    expect(found.covariance[0]!).toBeGreaterThan(fewer.covariance[0]!);
  });
});
