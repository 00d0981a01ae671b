/**
 * Counts as hand knitters work them out on paper. Common practice unless a publication is named; every number that goes in is
 * stated here.
 */
import { describe, expect, it } from 'vitest';
import { countsOf, halvesOf, spread } from '#counts';
import { V_NECK } from '../support/counted-samples.ts';

const HUNDRED_IN_INCHES = 100 / 25.4;
const PLAIN = { multiple: { main: null, rib: null }, parity: null, evenRows: false } as const;

/** 11 stitches and 9 rows to 4 in. */
const THICK = { gauge: { main: { stitches: 11, rows: 9, over: 4 }, rib: null }, ...PLAIN } as const;

const rowsOf = (intervals: ReturnType<typeof spread>): number[] =>
  (intervals ?? []).flatMap(({ rows, times }) => Array.from({ length: times }, () => rows));

describe('shaping, common practice', () => {
  it('makes 28 of 22 stitches with one increase at each end three times', () => {
    const times = rowsOf(spread(3, 18)).length;
    expect(22 + 2 * times).toBe(28);
  });

  it('parts 37 stitches into one at the centre and 18 a side', () => {
    expect(halvesOf(37)).toEqual({ centre: 1, side: 18 });
    expect(halvesOf(36)).toEqual({ centre: 0, side: 18 });
  });

  /** Rows 1, 3, 5, … 15 decrease: the first at once, then every second row over the other 14. */
  it('leaves 10 of 18 on each side after 15 rows, decreasing every second row from the first', () => {
    const later = rowsOf(spread(7, 14));
    expect(later).toEqual([2, 2, 2, 2, 2, 2, 2]);
    expect(halvesOf(37).side - 1 - later.length).toBe(10);
  });
});

describe('shaping as published', () => {
  /** 16 in at 7.5 rows to the inch are 120 rows; 43 to 79 stitches are 18 pairs. */
  it('increases from 43 to 79 stitches in 18 rows, every 6 or 8', () => {
    const intervals = spread((79 - 43) / 2, 16 * 7.5);
    expect(intervals).toEqual([
      { rows: 6, times: 12 },
      { rows: 8, times: 6 },
    ]);
  });

  it('decreases from 59 to 37 stitches in 11 pairs', () => {
    expect(rowsOf(spread((59 - 37) / 2, 100))).toHaveLength(11);
  });
});

describe('a drop-shoulder body 17 in wide at 11 stitches and 9 rows to 4 in, common practice', () => {
  const counts = countsOf(V_NECK, THICK, HUNDRED_IN_INCHES);
  const count = (piece: string, name: string): number =>
    counts.pieces.find((each) => each.piece === piece)!.dimensions.find((each) => each.name === name)!.count;

  it('closes: the back’s stitches are the neck’s and both shoulders’', () => {
    for (const piece of ['back', 'front'])
      expect(count(piece, 'cross-back-width')).toBe(count(piece, 'neck-width') + 2 * count(piece, 'shoulder-width'));
    expect(count('front', 'width')).toBe(count('back', 'width'));
  });

  it('matches every size within half a stitch or half a row', () => {
    const [stitch, row] = [4 / 11, 4 / 9];
    for (const { piece, dimensions } of V_NECK.pieces)
      for (const { name, axis, value } of dimensions) {
        const made = counts.pieces.find((each) => each.piece === piece)!.dimensions.find((each) => each.name === name);
        if (!made) continue;
        expect(Math.abs(made.measures - value!), `${piece}/${name}`).toBeLessThanOrEqual(
          (axis === 'across' ? stitch : row) / 2 + 1e-9,
        );
      }
  });

  it('has the sleeve increase from 9½ to 14 in', () => {
    const sleeve = counts.pieces.find(({ piece }) => piece === 'sleeve')!;
    expect(count('sleeve', 'cuff-width')).toBe(26);
    expect(count('sleeve', 'sleeve-top-width')).toBe(38);
    expect(sleeve.shaping[0]).toEqual({
      edge: 'right-seam',
      sides: 2,
      kind: 'increase',
      stitches: 6,
      rows: 43,
      fromRow: 0,
      every: [
        { rows: 6, times: 3 },
        { rows: 8, times: 3 },
      ],
    });
  });

  /** A ribbing of 22 rows sewn along 9½ in, where the body has 9 rows to 4 in: 9.5 × 9/4 = 21.4 rows. */
  it('picks up about one stitch a row along 9½ in', () => {
    const rows = 9.5 * (9 / 4);
    expect(22 / rows).toBeGreaterThan(0.9);
    expect(22 / rows).toBeLessThan(1.1);
  });
});
