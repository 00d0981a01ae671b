import { describe, expect, it } from 'vitest';
import { adviceOn, check } from '../../../tests/support/fit-samples.ts';
import { CHECKS, VERDICTS } from './advice.ts';
import { adviceFor } from './check-advice.ts';
import type { Decisions } from './decisions.ts';

/** The texts do not look at the decisions. */
const NONE = {} as Decisions;

describe('the line beside a check', () => {
  it('is a sentence for every check and verdict', () => {
    for (const name of CHECKS)
      for (const verdict of VERDICTS) expect(adviceFor(name, verdict, -12, NONE)).toMatch(/^[A-Z].*\.$/);
  });

  it('says by how much it is short, or how little there is to spare', () => {
    expect(adviceFor('upper-arm', 'fails', -12, NONE)).toContain('short by 1.2 cm');
    expect(adviceFor('upper-arm', 'tight', 12, NONE)).toContain('with only 1.2 cm to spare');
    expect(adviceFor('upper-arm', 'tight', -12, NONE)).toContain('short by 1.2 cm');
  });

  it('says what to measure where it is not known', () => {
    for (const name of CHECKS) expect(adviceFor(name, 'unknown', 0, NONE)).toMatch(/[Mm]easure|Enter/);
  });

  it('says so where it does not apply', () => {
    expect(check(adviceOn({ design: { silhouette: 'vest' } }), 'upper-arm').advice).toBe(
      'Does not apply to this design.',
    );
  });
});
