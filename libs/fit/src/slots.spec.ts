import { describe, expect, it } from 'vitest';
import { INPUT_COUNT, INPUT_NAMES, S, SLOT_COUNT } from './slots.ts';

describe('places in the row', () => {
  it('are one for each number, inputs first', () => {
    const places = Object.values(S);
    expect(new Set(places)).toEqual(new Set(Array.from({ length: SLOT_COUNT }, (_, i) => i)));
    for (const name of INPUT_NAMES) expect(S[name]).toBeLessThan(INPUT_COUNT);
    expect(S.ease).toBe(INPUT_COUNT);
  });
});
