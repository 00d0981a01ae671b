import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EASE_CATEGORIES } from './design.ts';
import { chosenEase, easeBands, easeLies, easeWords } from './ease.ts';
import { inWords } from './in-words.ts';
import { rulesWith } from './rules.ts';
import { rulesAtSize } from './scale.ts';

const BANDS = easeBands(rulesWith({}));

describe('the bands', () => {
  it('are the published centimetres of an adult, closest first', () => {
    expect(BANDS.map(({ category, from, to }) => [category, from, to])).toEqual([
      ['very-close', -100, -50],
      ['close', -25, 25],
      ['classic', 50, 100],
      ['loose', 100, 150],
      ['oversized', 150, 250],
    ]);
  });

  /** κ = 0.5: κ½ = (1 + 0.5)/2 = 0.75. */
  it('shrink with κ½, for wearing ease hardly depends on size', () => {
    const small = easeBands(rulesAtSize(rulesWith({}), 0.5));
    expect(small.map(({ from, to }) => [from, to])).toEqual(BANDS.map(({ from, to }) => [0.75 * from, 0.75 * to]));
  });

  it('take a maker’s own numbers', () => {
    expect(easeBands(rulesWith({ 'ease-classic-to': 90 }))[2]).toEqual({ category: 'classic', from: 50, to: 90 });
  });
});

describe('the chosen ease', () => {
  it.each([
    [0, 50],
    [0.5, 75],
    [1, 100],
  ])('classic at place %d is %d mm', (place, expected) => {
    expect(chosenEase({ category: 'classic', place }, BANDS)).toBe(expected);
  });

  it('is a plain number as given', () => {
    expect(chosenEase({ mm: -37.5 }, BANDS)).toBe(-37.5);
  });

  it('is named by its band, a plain number by nothing', () => {
    expect(easeWords({ category: 'very-close', place: 0 }).label).toBe('ease, very close');
    expect(easeWords({ category: 'classic', place: 0 }).from).toMatch(/^Craft Yarn Council.*from memory/);
    expect(easeWords({ mm: 30 })).toEqual({ label: 'ease', from: 'chosen' });
  });
});

describe('where an ease lies', () => {
  it.each([
    [-120, 'closer than very close'],
    [-100, 'very close'],
    [-40, 'between very close and close'],
    [0, 'close'],
    [35, 'between close and classic'],
    [100, 'classic'],
    [100.001, 'loose'],
    [150, 'loose'],
    [250, 'oversized'],
    [400, 'oversized'],
  ])('%d mm: %s (a shared end belongs to the closer band)', (ease, expected) => {
    expect(easeLies(ease, BANDS, null)).toBe(expected);
  });

  it('is in the chosen band, wherever in it, at any size', () => {
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    const kappa = fc.double({ min: 0.3, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...EASE_CATEGORIES), place, kappa, (category, place, kappa) => {
        const bands = easeBands(rulesAtSize(rulesWith({}), kappa));
        expect(easeLies(chosenEase({ category, place }, bands), bands, category)).toBe(inWords(category));
      }),
    );
  });
});
