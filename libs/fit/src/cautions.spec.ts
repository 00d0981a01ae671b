import { describe, expect, it } from 'vitest';
import { FIGURES } from '#body';
import { cautionsFor } from './cautions.ts';

const codes = (figure: Parameters<typeof cautionsFor>[0], girth = 1000) =>
  cautionsFor(figure, girth).map(({ code }) => code);

describe('cautions', () => {
  it.each(['child', 'baby'] as const)('for a %s: cords, closures, tight necks, nightwear, allergies', (figure) => {
    expect(codes(figure)).toEqual(['no-cords', 'closures-hold', 'neck-not-tight', 'nightwear', 'fibre-allergy']);
  });

  it.each(['woman', 'man', 'unsaid', null] as const)('for %s: allergies alone', (figure) => {
    expect(codes(figure)).toEqual(['fibre-allergy']);
  });

  it('are a child’s for a small garment, where nothing is known of who wears it', () => {
    expect(codes(null, 500)).toContain('no-cords');
    expect(codes('woman', 700)).not.toContain('no-cords');
  });

  it('each say where they are from, and leave children’s clothes to local law', () => {
    for (const figure of FIGURES)
      for (const { source } of cautionsFor(figure, 1000)) expect(source).toMatch(/practice/);
    for (const { code, source } of cautionsFor('child', 600))
      if (code !== 'fibre-allergy') expect(source).toMatch(/local law/);
  });
});
