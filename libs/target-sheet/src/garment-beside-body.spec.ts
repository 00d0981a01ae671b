import { describe, expect, it } from 'vitest';
import type { Garment } from '#garment';
import { womanWith } from '../../../tests/support/fit-samples.ts';
import { garmentBesideBody } from './garment-beside-body.ts';

/** A girth of 1010 written as a flat width. */
const wide: Garment = {
  construction: 'drop-shoulder',
  measures: [{ name: 'chest-width', value: 1010, how: 'home' }],
  thicknessMm: 3,
  thicknessU: 0.3,
  layer: null,
  title: '',
  wornStretched: false,
  fits: null,
  neckline: null,
  sleeve: 'long',
  wears: {},
};

describe('a garment held against its wearer', () => {
  const measured = womanWith({ 'chest-girth': 940 });

  it('is asked about where her chest was measured', () => {
    expect(garmentBesideBody(wide, measured)).toMatchObject([
      { name: 'chest-width', code: 'girth-for-width', wouldBe: 505 },
    ]);
  });

  it('is not where her chest is not known, or only guessed', () => {
    const guessed = { ...measured.values['chest-girth']!, how: 'estimated' as const };
    expect(garmentBesideBody(wide, null)).toEqual([]);
    expect(garmentBesideBody(wide, { ...measured, values: { 'chest-girth': guessed } })).toEqual([]);
  });
});
