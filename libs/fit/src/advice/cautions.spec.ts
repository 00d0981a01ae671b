import { describe, expect, it } from 'vitest';
import { FIGURES, type Figure } from '#body';
import { cautionsFor } from './cautions.ts';

type Wearer = Parameters<typeof cautionsFor>[0];
const of = (figure: Figure, ageYears: number | null = null): Wearer => ({ figure, ageYears });
const codes = (wearer: Wearer, girth = 1000) => cautionsFor(wearer, girth).map(({ code }) => code);

describe('cautions', () => {
  it.each(['child', 'baby'] as const)('for a %s: cords, closures, tight necks, nightwear, allergies', (figure) => {
    expect(codes(of(figure))).toEqual(['no-cords', 'closures-hold', 'neck-not-tight', 'nightwear', 'fibre-allergy']);
  });

  it.each(['woman', 'man', 'unsaid'] as const)('for a %s: allergies alone', (figure) => {
    expect(codes(of(figure))).toEqual(['fibre-allergy']);
    expect(codes(of(figure, 14))).toEqual(['fibre-allergy']);
  });

  it.each([null, of('unsaid')])(
    'are a child’s for a small garment, where it is not said who wears it (%j)',
    (wearer) => {
      expect(codes(wearer, 500)).toContain('no-cords');
      expect(codes(wearer)).not.toContain('no-cords');
      expect(codes(of('woman'), 700)).not.toContain('no-cords');
      expect(codes(of('unsaid', 30), 700)).not.toContain('no-cords');
    },
  );

  it.each(['woman', 'unsaid'] as const)('are a child’s for a %s below 14 years', (figure) => {
    expect(codes(of(figure, 13.9))).toContain('no-cords');
  });

  it('each say where they are from, and leave children’s clothes to local law', () => {
    for (const figure of FIGURES)
      for (const { code, source } of cautionsFor(of(figure), 1000))
        expect(source.code).toBe(code === 'fibre-allergy' ? 'common-practice' : 'practice-and-law-for-children');
  });
});
