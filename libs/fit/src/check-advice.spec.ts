import { describe, expect, it } from 'vitest';
import { adviceOn, check, garmentOf } from '../../../tests/support/fit-samples.ts';
import { CHECKS, VERDICTS } from './advice.ts';
import { adviceFor } from './check-advice.ts';

describe('the line beside a check', () => {
  it('is a sentence for every check and verdict', () => {
    for (const name of CHECKS)
      for (const verdict of VERDICTS) expect(adviceFor(name, verdict, -12, 'cm')).toMatch(/^[A-Z].*\.$/);
  });

  it('says by how much it fails, or how little there is to spare, as the tape is marked', () => {
    expect(adviceFor('upper-arm', 'fails', -12, 'cm')).toBe(
      'The sleeve is too close for the upper arm, by 1.2 cm: choose more ease, or a fabric that stretches.',
    );
    expect(adviceFor('upper-arm', 'tight', 12, 'cm')).toContain('clears the upper arm, with only 1.2 cm to spare');
    expect(adviceFor('upper-arm', 'tight', -12, 'cm')).toContain('too close for the upper arm, by 1.2 cm');
    expect(adviceFor('front-and-back', 'tight', 16, 'cm')).toMatch(
      /^Front and back can be the same length, but only just:/,
    );
    expect(adviceFor('front-and-back', 'tight', -16, 'cm')).toMatch(/^The front of the body is longer than the back/);
    expect(adviceFor('head-through-neck', 'fails', -25.4, 'in')).toContain('will not pass the head, by 1 in:');
  });

  it('says what to measure where it is not known', () => {
    for (const name of CHECKS) expect(adviceFor(name, 'unknown', 0, 'cm')).toMatch(/[Mm]easure|Enter/);
  });

  it('asks for the fabric where the body is known and only a stretch could help', () => {
    expect(adviceFor('upper-arm', 'unknown', -27, 'cm')).toBe(
      'The sleeve is too close for the upper arm, by 2.7 cm, unless the fabric stretches: pull the swatch across and measure its stretch.',
    );
    expect(adviceFor('negative-ease', 'unknown', -0.2, 'cm')).toBe(
      'The garment is smaller than the body: pull the swatch across and measure its stretch.',
    );
  });

  it('does not call a garment small beside a body that is not known', () => {
    const design = { basis: 'garment', length: 'custom', customLengthMm: 600 } as const;
    const copied = adviceOn({ body: null, garment: garmentOf({ 'chest-width': 500 }), design });
    const { verdict, needs, advice } = check(copied, 'negative-ease');
    expect([verdict, needs]).toEqual(['unknown', ['chest-girth']]);
    expect(advice).toBe('Measure the chest to know whether the fabric has to stretch.');
  });

  it('says so where it does not apply', () => {
    expect(check(adviceOn({ design: { silhouette: 'vest' } }), 'upper-arm').advice).toBe(
      'Does not apply to this design.',
    );
  });
});
