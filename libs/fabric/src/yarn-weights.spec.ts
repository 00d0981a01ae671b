import { describe, expect, it } from 'vitest';
import { EXPECTED_THICKNESS } from './expected-thickness.ts';
import { STITCHES } from './stitch.ts';
import { categoriesOfWraps, YARN_WEIGHTS } from './yarn-weights.ts';

describe('YARN_WEIGHTS', () => {
  it('has the eight categories in order, each band the right way round', () => {
    expect(YARN_WEIGHTS.weights.map(({ category }) => category)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    for (const { crochet, hookMm, stockinette, wrapsPerInch } of YARN_WEIGHTS.weights)
      for (const { from, to } of [crochet, hookMm, stockinette, wrapsPerInch])
        expect(from ?? 0).toBeLessThan(to ?? Infinity);
  });

  it('has fewer stitches and wraps, and larger hooks, as yarn gets thicker', () => {
    YARN_WEIGHTS.weights.slice(1).forEach((thicker, i) => {
      const finer = YARN_WEIGHTS.weights[i]!;
      expect(thicker.stockinette.to!).toBeLessThan(finer.stockinette.to!);
      expect(thicker.crochet.to!).toBeLessThan(finer.crochet.to!);
      expect(thicker.hookMm.from!).toBeGreaterThan(finer.hookMm.from!);
      expect(thicker.wrapsPerInch.from!).toBeLessThan(finer.wrapsPerInch.from!);
    });
  });

  it('keeps what the 2018 printing says otherwise', () => {
    expect(YARN_WEIGHTS.otherPrintings.map(({ printing, category }) => [printing, category])).toEqual([
      ['2018', 6],
      ['2018', 7],
    ]);
  });

  it.each([
    [14, [1, 2, 3]],
    [12, [2, 3, 4]],
    [9, [4, 5]],
    [4.5, []],
    [0.5, []],
    [60, [0]],
  ])('%d wraps per inch lie in the bands of %j', (wraps, categories) => {
    expect(categoriesOfWraps(wraps).map(({ category }) => category)).toEqual(categories);
  });
});

describe.each(STITCHES)('EXPECTED_THICKNESS of %s', (stitch) => {
  const ranges = EXPECTED_THICKNESS[stitch];

  it('has a range for each category, thicker with each', () => {
    expect(ranges.map(({ category }) => category)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    ranges.slice(1).forEach(({ from, to }, i) => {
      expect(from).toBeLessThan(to);
      expect(from).toBeGreaterThan(ranges[i]!.from);
      expect(to).toBeGreaterThan(ranges[i]!.to);
    });
  });

  it('carries on at both ends as it says: from the neighbour’s end, as wide in proportion', () => {
    const near = (value: number, expected: number) => expect(Math.abs(value - expected)).toBeLessThanOrEqual(0.055);
    for (const [ours, theirs] of [
      [0, 1],
      [1, 2],
    ] as const) {
      near(ranges[ours]!.to, ranges[theirs]!.from);
      near(ranges[ours]!.from, ranges[theirs]!.from ** 2 / ranges[theirs]!.to);
    }
    near(ranges[7]!.from, ranges[6]!.to);
    near(ranges[7]!.to, ranges[6]!.to ** 2 / ranges[6]!.from);
    expect(ranges.filter(({ assumed }) => assumed).map(({ category }) => category)).toEqual([0, 1, 7]);
  });
});
