import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { EASE_CATEGORIES } from '../design/design.ts';
import { chosenEase, easeBands, easeLies, easeSource } from './ease.ts';
import { rulesWith } from '../design/rules.ts';
import { rulesAtSize } from '../design/scale.ts';

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

  it('is from the rule of its band, a plain number from nobody else', () => {
    expect(easeSource({ category: 'classic', place: 0 })).toEqual({
      code: 'rule',
      params: { rule: 'ease-classic-from' },
    });
    expect(easeSource({ mm: 30 })).toEqual({ code: 'chosen', params: {} });
  });
});

describe('where an ease lies', () => {
  it.each([
    [-120, 'closer-than', { category: 'very-close' }],
    [-100, 'within', { category: 'very-close' }],
    [-40, 'between', { closer: 'very-close', looser: 'close' }],
    [0, 'within', { category: 'close' }],
    [35, 'between', { closer: 'close', looser: 'classic' }],
    [100, 'within', { category: 'classic' }],
    [100.001, 'within', { category: 'loose' }],
    [150, 'within', { category: 'loose' }],
    [250, 'within', { category: 'oversized' }],
    [400, 'within', { category: 'oversized' }],
  ])('%d mm: %s %o (a shared end belongs to the closer band)', (ease, code, params) => {
    expect(easeLies(ease, BANDS, null)).toEqual({ code, params });
  });

  it('is in the chosen band, wherever in it, at any size', () => {
    const place = fc.double({ min: 0, max: 1, noNaN: true });
    const kappa = fc.double({ min: 0.3, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...EASE_CATEGORIES), place, kappa, (category, place, kappa) => {
        const bands = easeBands(rulesAtSize(rulesWith({}), kappa));
        expect(easeLies(chosenEase({ category, place }, bands), bands, category)).toEqual({
          code: 'within',
          params: { category },
        });
      }),
    );
  });
});
