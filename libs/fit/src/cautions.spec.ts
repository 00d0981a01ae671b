import { describe, expect, it } from 'vitest';
import { FIGURES } from '#body';
import { cautionsFor } from './cautions.ts';

const codes = (figure: Parameters<typeof cautionsFor>[0]) => cautionsFor(figure).map(({ code }) => code);

describe('cautions', () => {
  it.each(['child', 'baby'] as const)('for a %s: cords, closures, tight necks, nightwear, allergies', (figure) => {
    expect(codes(figure)).toEqual(['no-cords', 'closures-hold', 'neck-not-tight', 'nightwear', 'fibre-allergy']);
  });

  it.each(['woman', 'man', 'unsaid', null] as const)('for %s: allergies alone', (figure) => {
    expect(codes(figure)).toEqual(['fibre-allergy']);
  });

  it('each say where they are from, and leave children’s clothes to local law', () => {
    for (const figure of FIGURES) for (const { source } of cautionsFor(figure)) expect(source).toMatch(/practice/);
    for (const { code, source } of cautionsFor('child'))
      if (code !== 'fibre-allergy') expect(source).toMatch(/local law/);
  });
});
