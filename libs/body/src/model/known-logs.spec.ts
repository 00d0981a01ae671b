import { describe, expect, it } from 'vitest';
import { knownLogs } from './known-logs.ts';

const DIMENSIONS = ['stature', 'weight', 'hip-girth'] as const;

describe('known values as logarithms', () => {
  it('have their place, and an error variance of (u/value)²', () => {
    const known = knownLogs(DIMENSIONS, [
      { name: 'hip-girth', value: 1000, u: 10 },
      { name: 'weight', value: 70_000, u: 700 },
    ]);
    expect(known.at).toEqual([2, 1]);
    expect(known.logs).toEqual([Math.log(1000), Math.log(70_000)]);
    known.noise.forEach((variance) => expect(variance).toBeCloseTo(1e-4, 15));
  });

  it('are never surer than half a millimetre, or 50 g', () => {
    const { noise } = knownLogs(DIMENSIONS, [
      { name: 'stature', value: 1000, u: 0 },
      { name: 'weight', value: 50_000, u: 3 },
    ]);
    expect(noise[0]).toBeCloseTo(0.0005 ** 2, 15);
    expect(noise[1]).toBeCloseTo(0.001 ** 2, 15);
  });

  it.each([
    [{ name: 'head-girth', value: 560, u: 5 }, 'unknown-dimension', '/known/1/name'],
    [{ name: 'stature', value: 1700, u: 5 }, 'measured-twice', '/known/1/name'],
    [{ name: 'weight', value: 0, u: 5 }, 'not-a-measure', '/known/1/value'],
    [{ name: 'weight', value: Infinity, u: 5 }, 'not-a-measure', '/known/1/value'],
    [{ name: 'weight', value: 60_000, u: Infinity }, 'not-a-measure', '/known/1/value'],
    [{ name: 'weight', value: 60_000, u: -0.1 }, 'not-a-measure', '/known/1/value'],
    [{ name: 'weight', value: 60_000, u: Number.NaN }, 'not-a-measure', '/known/1/value'],
  ] as const)('refuse %j: %s', (one, code, pointer) => {
    const values = [{ name: 'stature', value: 1650, u: 5 }, one] as const;
    expect(() => knownLogs(DIMENSIONS, values)).toThrow(expect.objectContaining({ code, pointer }));
  });
});
