import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitRequest } from '../../../../tests/support/fit-requests.ts';
import {
  bodyOf,
  dimension,
  everyDimension,
  fabricOf,
  garmentOf,
  made,
  WOMAN,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import { adviceInWords, inWords } from '../../../../tests/support/advice-in-words.ts';

const terms = (path: string, differs: Differs = {}) => dimension(adviceInWords(differs), path).because;
const words = (path: string, differs: Differs = {}) => terms(path, differs).map(({ term }) => term);

describe('the terms of a dimension', () => {
  it('each say what they are and where they are from', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const [path, { because }] of everyDimension(inWords(request)))
          for (const { term, from } of because) {
            expect(term, path).toMatch(/^\S.*\S$/);
            expect(from, path).toMatch(/\S/);
          }
      }),
      { numRuns: 30 },
    );
  });
});

describe('in words', () => {
  /** Half of 940 and of 75, and 2(6 − 3) for the fabric. */
  it('a width: chest, ease, fabric', () => {
    const body = bodyOf(WOMAN, 'woman', { 'chest-girth': 15 });
    const width = terms('chest-width', { body, fabric: fabricOf(6), design: { length: 'cropped' } });
    expect(width.map(({ term, value, u }) => [term, value, u])).toEqual([
      ['half of chest girth', 470, 7.5],
      ['thicker fabric than ordinary', 6, expect.closeTo(0.6, 9)],
      ['half of ease, classic', 37.5, 0],
    ]);
    expect(width[0]!.from).toBe('measured at home');
    expect(width[1]!.from).toMatch(/^2\(t − t₀\), t measured.*t₀ assumed$/);
    expect(width[2]!.from).toMatch(/^Craft Yarn Council/);
  });

  it('a thin fabric is thinner than ordinary', () => {
    expect(words('chest-width', { fabric: fabricOf(1) })).toContain('thinner fabric than ordinary');
  });

  it('a thick fabric that takes from a length is told as thick', () => {
    const { term, from, value } = terms('body-to-underarm', { fabric: fabricOf(6) }).find((each) =>
      each.from.includes('t₀'),
    )!;
    expect([term, from.split(',')[0]]).toEqual(['thicker fabric than ordinary', '−1.571(t − t₀)']);
    expect(value).toBeCloseTo((-Math.PI / 2) * 3, 9);
  });

  it('a fabric’s formula gives the fabric’s part', () => {
    const number = '(−?[\\d.]*)';
    const alike = new RegExp(`^${number}\\(t − t₀\\)`);
    const apart = new RegExp(`^${number}t ([−+]) ${number}t₀`);
    const signed = (text: string) => Number(text.replace('−', '-').replace(/^([-+]?)$/, '$11'));
    const reckon = (from: string, t: number, usual: number) => {
      const one = alike.exec(from);
      if (one) return signed(one[1]!) * (t - usual);
      const two = apart.exec(from)!;
      return signed(two[1]!) * t + signed(two[2]! + two[3]!) * usual;
    };
    fc.assert(
      fc.property(fitRequest, (request) => {
        const t = request.fabric.thicknessMm;
        const usual = request.rules['ordinary-thickness'] ?? 3;
        for (const [path, { because }] of everyDimension(inWords(request)))
          for (const { term, value, from } of because) {
            if (!from.includes('t₀')) continue;
            expect(Math.abs(reckon(from, t, usual) - value), path).toBeLessThanOrEqual(0.0006 * (t + usual));
            expect(term).toBe(
              !alike.test(from)
                ? 'fabric’s thickness beside an ordinary one’s'
                : t === usual
                  ? 'fabric as thick as ordinary'
                  : `${t < usual ? 'thinner' : 'thicker'} fabric than ordinary`,
            );
          }
      }),
      { numRuns: 60 },
    );
  });

  it('a sleeve: nape to cuff, less a quarter of the chest and of the ease', () => {
    expect(words('sleeve-length', { design: { length: 'cropped' } })).toEqual(
      expect.arrayContaining(['nape to cuff', 'less a quarter of chest girth', 'less a quarter of ease, classic']),
    );
  });

  it('a wider hip: the hip, and no word of the chest', () => {
    const all = words('chest-width', { body: womanWith({ 'hip-girth': 1040 }) });
    expect(all).toContain('half of hip girth');
    expect(all.join()).not.toContain('chest');
  });

  it('a garment: its width, its fabric and the new one', () => {
    const garment = garmentOf({ 'chest-width': 520 }, { thicknessMm: 4 });
    const design = { basis: 'garment', length: 'cropped', ease: { as: 'garment', changeMm: 20 } } as const;
    expect(words('chest-width', { garment, fabric: fabricOf(7), design })).toEqual([
      "the garment's chest width",
      "less twice the garment's own fabric",
      'twice fabric',
      'half of wished change of ease',
    ]);
  });

  it('a panel made: that panel alone', () => {
    expect(words('front/width', { made: [made('back/width', 520)] })).toEqual(['the back as made']);
  });

  it.each([
    ['sleeve/cap-height', 'set-in', 'solved from the seam'],
    ['sleeve/sleeve-raglan-depth', 'raglan', 'solved from the seam'],
    ['underarm-seam', 'set-in', 'the sleeve below its seam with the body'],
    ['neck-opening', 'drop-shoulder', 'length of the neck’s finished edge'],
  ] as const)('%s of a %s is solved for: one term', (path, construction, term) => {
    expect(words(path, { design: { construction } })).toEqual([term]);
  });

  it('a length that follows from a body and a cap as made says so', () => {
    const differs = {
      design: { construction: 'set-in' },
      made: [made('sleeve/cap-height', 120), made('back/body-to-underarm', 340)],
    } as const;
    const terms = (path: string) => dimension(adviceInWords(differs), path).because.map(({ term }) => term);
    expect(terms('centre-back-length')).toEqual(['the body as made, and the armhole that the sleeve as made needs']);
    expect(terms('back/body-to-underarm')).toEqual(['the back as made']);
  });

  it('a neck that was chosen says so, whether or not it passes', () => {
    expect(words('neck-width', { design: { neckWidthMm: 120 } })).toEqual(['chosen neck width']);
  });

  it('a fabric that enters otherwise than an ordinary one is neither thick nor thin', () => {
    const found = terms('back/width', { fabric: fabricOf(3) }).find((each) => each.from.includes('t₀'))!;
    expect([found.term, found.from.split(',')[0]]).toEqual([
      'fabric’s thickness beside an ordinary one’s',
      '1.571t − 2t₀',
    ]);
  });

  it('a neck that was widened says so', () => {
    expect(words('neck-width', { body: womanWith({ 'head-girth': 600 }) })).toEqual(['widened until the head passes']);
    expect(words('neck-width')).toEqual(['0.318 × neck base girth', 'room at the neck']);
  });
});
