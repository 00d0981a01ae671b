/**
 * Common practice, no source: what makers reckon with at the published sizes, from the rows as they are. Classic ease, worsted yarn (a fabric of
 * 3 mm), in inches.
 */
import { describe, expect, it } from 'vitest';
import { CRAFTS } from '#fabric';
import { CONSTRUCTIONS } from '#garment';
import { adviceOn, bodyOf, check, fabricOf, mm } from '../support/fit-samples.ts';
import { SIZE_BODIES } from '../support/size-bodies.ts';

const sizeBody = (size: string) => {
  const { measures, figure } = SIZE_BODIES.find((each) => each.size === size)!;
  return bodyOf(measures, figure);
};
const WORSTED = fabricOf(3);
const inches = (length: number): number => length / 25.4;

function expectBetween(length: number, [from, to]: readonly [number, number]): void {
  expect(inches(length)).toBeGreaterThanOrEqual(from);
  expect(inches(length)).toBeLessThanOrEqual(to);
}

describe('a woman’s M', () => {
  const advice = (construction: (typeof CONSTRUCTIONS)[number]) =>
    adviceOn({ body: sizeBody('woman M'), fabric: WORSTED, design: { construction } });

  it('has a set-in armhole of 7½ to 8¼, an upper sleeve of 12 to 13 and an underarm seam of 16 to 17½', () => {
    const setIn = advice('set-in');
    expectBetween(mm(setIn, 'armhole-depth'), [7.5, 8.25]);
    expectBetween(2 * mm(setIn, 'sleeve-top-width'), [12, 13]);
    expectBetween(mm(setIn, 'underarm-seam'), [16, 17.5]);
  });

  it('has a drop shoulder’s armhole of 8½ to 9½', () => {
    expectBetween(mm(advice('drop-shoulder'), 'armhole-depth'), [8.5, 9.5]);
  });

  it('has a raglan of 8½ to 9½', () => {
    expectBetween(mm(advice('raglan'), 'raglan-depth'), [8.5, 9.5]);
  });
});

it('a woman’s 4X has a raglan of 10½ to 12', () => {
  const advice = adviceOn({ body: sizeBody('woman 4X'), fabric: WORSTED, design: { construction: 'raglan' } });
  expectBetween(mm(advice, 'raglan-depth'), [10.5, 12]);
});

describe.each(SIZE_BODIES.filter(({ figure }) => figure === 'baby').map(({ size }) => size))('%s', (size) => {
  it.each(CONSTRUCTIONS)('opens at the shoulder: %s', (construction) => {
    for (const craft of CRAFTS) {
      const { opening } = adviceOn({
        body: sizeBody(size),
        fabric: fabricOf(3, { craft }),
        design: { construction },
      }).design;
      expect(['shoulder', 'shoulders']).toContain(opening.at);
      expect(opening.length).toBeGreaterThan(0);
    }
  });
});

describe.each(SIZE_BODIES.filter(({ figure }) => figure === 'man').map(({ size }) => size))('%s', (size) => {
  it.each(CONSTRUCTIONS)('goes on over the shoulders: %s', (construction) => {
    for (const craft of CRAFTS) {
      const advice = adviceOn({ body: sizeBody(size), fabric: fabricOf(3, { craft }), design: { construction } });
      expect(check(advice, 'over-the-shoulders').verdict).toBe('fine');
      expect(advice.design.opening.at).toBe('none');
    }
  });
});
