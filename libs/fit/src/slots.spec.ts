import { describe, expect, it } from 'vitest';
import { INPUT_COUNT, INPUT_NAMES, Row, S, SLOT_COUNT } from './slots.ts';

describe('places in the row', () => {
  it('are one for each number, inputs first', () => {
    const places = Object.values(S);
    expect(new Set(places)).toEqual(new Set(Array.from({ length: SLOT_COUNT }, (_, i) => i)));
    for (const name of INPUT_NAMES) expect(S[name]).toBeLessThan(INPUT_COUNT);
    expect(S.ease).toBe(INPUT_COUNT);
  });
});

describe('a row', () => {
  it('puts a number in its place, moved only where it is the one that is nudged', () => {
    const row = new Row();
    row.nudged = S.cuff;
    row.by = 5;
    expect(row.put(S.cuff, 100)).toBe(105);
    expect(row.put(S.sleeve, 100)).toBe(100);
    expect([row.v[S.cuff], row.v[S.sleeve]]).toEqual([105, 100]);
  });
});
