import { describe, expect, it } from 'vitest';
import { BODY_DIMENSIONS } from '../body-dimension.ts';
import { TAKING } from './taking.ts';

describe('how a measure is taken', () => {
  it('is said for every dimension, in a sentence', () => {
    expect(Object.keys(TAKING).sort()).toEqual([...BODY_DIMENSIONS].sort());
    for (const { how } of Object.values(TAKING)) expect(how).toMatch(/^[A-Z].{20,160}\.$/);
  });

  it('runs from what is easy alone to what needs a second person', () => {
    const ease = Object.values(TAKING).map(({ alone }) => alone);
    expect(ease).toEqual([...ease].sort());
  });
});
