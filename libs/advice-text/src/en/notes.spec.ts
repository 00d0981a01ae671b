import { describe, expect, it } from 'vitest';
import type { NoteMessage } from '#fit';
import { text } from '../text.ts';
import { adviceInWords } from '../../../../tests/support/advice-in-words.ts';
import {
  check,
  fabricOf,
  garmentOf,
  made,
  womanWith,
  type Differs,
  bodyOf,
  dimension,
} from '../../../../tests/support/fit-samples.ts';

const note = (code: string, differs: Differs) => adviceInWords(differs).notes.find((each) => each.code === code)?.text;

describe('notes', () => {
  it('say how much larger the neck became for the head', () => {
    expect(note('neck-widened', {})).toBeUndefined();
    expect(note('neck-widened', { body: womanWith({ 'head-girth': 600 }) })).toMatch(/6 % larger/);
  });

  it('say which of its parts grew, where others were kept', () => {
    const body = womanWith({ 'head-girth': 620 });
    expect(note('neck-widened', { body, design: { frontNeckDepthMm: 80 } })).toMatch(
      /^The neck is (\d+) % wider and \1 % deeper behind than its rule/,
    );
    // The crew of 143.1 may grow to 0.65 × 380 less its bands, 197: 38 % wider; what the head still lacks is depth.
    expect(note('neck-widened', { body: womanWith({ 'head-girth': 790, 'across-back': 380 }) })).toMatch(
      /^The neck is 38 % wider and 4\d % deeper than its rule: the shoulders carry no wider one, and the head is to pass\.$/,
    );
  });

  it('do not say so of a neck whose three numbers are all chosen', () => {
    const design = { neckWidthMm: 190, frontNeckDepthMm: 66, backNeckDepthMm: 19 };
    const differs = { design, body: womanWith({ 'head-girth': 672 }) };
    expect(check(adviceInWords(differs), 'head-through-neck').verdict).toBe('tight');
    expect(note('neck-widened', differs)).toBeUndefined();
  });

  it('do not say so of a neck that was chosen, which does not pass the head', () => {
    const design = { neckWidthMm: 120, frontNeckDepthMm: 50, backNeckDepthMm: 15 };
    expect(note('neck-widened', { design })).toBeUndefined();
    expect(note('neck-opens', { design })).toMatch(
      /^The neck opens at one shoulder for [\d.]+ cm: close it with buttons\.$/,
    );
  });

  it('say where a band of her own ends, which would leave no shoulders', () => {
    expect(note('band-ends', { design: { construction: 'set-in', bandMm: 150 } })).toMatch(
      /^A band of 15 cm would leave no shoulder beside the neck, so it is [\d.]+ cm deep\.$/,
    );
    expect(note('band-ends', { design: { bandMm: 40 } })).toBeUndefined();
  });

  it('say nothing of bands whose depth is not known, as of a child without a chest', () => {
    const garment = garmentOf({ 'chest-width': 350 });
    const body = bodyOf({ 'back-waist-length': 280 }, 'child');
    const { notes } = adviceInWords({ body, garment, design: { basis: 'both', silhouette: 'vest' } });
    expect(notes.map(({ text }) => text).join(' ')).not.toMatch(/NaN/);
    expect(notes.some(({ code }) => code === 'armhole-bands')).toBe(false);
  });

  it('say of a neck smaller than the wearer’s that it may sit tight', () => {
    const small = { neckWidthMm: 110, frontNeckDepthMm: 40, backNeckDepthMm: 10 };
    expect(note('neck-tight', { design: small })).toMatch(/ cm shorter than the neck is round, and may sit tight: /);
    expect(note('neck-tight', {})).toBeUndefined();
  });

  it('say how a neck opens that does not pass the head', () => {
    const small = { neckWidthMm: 110, frontNeckDepthMm: 40, backNeckDepthMm: 10 };
    expect(note('neck-opens', { design: small })).toMatch(/^The neck opens at one shoulder for [\d.]+ cm: /);
    const vest = { ...small, silhouette: 'vest', construction: 'raglan' } as const;
    expect(note('neck-opens', { design: vest })).toMatch(/^The neck opens at the back for /);
    const raglan = { ...small, construction: 'raglan' } as const;
    expect(note('neck-opens', { design: raglan })).toMatch(/^The neck opens along one raglan seam for /);
    const asked = { ...vest, opening: { at: 'shoulder', lengthMm: null } } as const;
    expect(note('opening-at-back', { design: asked })).toMatch(/^A raglan vest has no seam beside its neck/);
  });

  it('say where an opening of her own has no room, or no use', () => {
    const opening = { at: 'shoulder', lengthMm: 400 } as const;
    expect(note('opening-ends', { design: { opening } })).toMatch(
      /^There is no room at one shoulder for an opening of 40 cm: it ends after [\d.]+ cm\.$/,
    );
    expect(note('opening-needless', { design: { silhouette: 'cardigan', opening } })).toMatch(/^A cardigan is open/);
  });

  it('say that nothing holds a raglan together without sleeves', () => {
    expect(note('raglan-vest', { design: { silhouette: 'vest', construction: 'raglan' } })).toMatch(/choose a set-in/);
    expect(note('raglan-vest', { design: { silhouette: 'vest', construction: 'set-in' } })).toBeUndefined();
    expect(note('raglan-vest', { design: { construction: 'raglan' } })).toBeUndefined();
  });
});

describe('a sleeve that no cap joins to its armhole', () => {
  const wide = { construction: 'set-in', ease: { mm: 250 } } as const;
  const body = womanWith({ 'upper-arm-girth': 460 });

  it('does not come of an arm that is thick: its armhole is deep enough for a cap', () => {
    expect(note('no-sleeve', { body, design: wide })).toBeUndefined();
  });

  it('is said to need what was made worked again', () => {
    const made1 = { body, design: wide, made: [made('back/armhole-depth', 200)] };
    expect(note('no-sleeve', made1)).toMatch(/: make it narrower, or work the body again, with a deeper armhole\.$/);
    const sleeve = [made('sleeve/sleeve-top-width', 600), made('back/armhole-depth', 200)];
    const made2 = { design: { construction: 'set-in' }, made: sleeve } as const;
    expect(note('no-sleeve', made2)).toMatch(/: work the sleeve again, narrower\.$/);
    expect(dimension(adviceInWords(made2), 'sleeve/cap-height').noAdvice?.reason).toBe(note('no-sleeve', made2));
  });
});

describe('a squared drop without an inset', () => {
  it('is said to be hardly wider than the back, or no wider', () => {
    const across = (acrossBack: number) =>
      note('squared-as-drop', {
        body: womanWith({ 'across-back': acrossBack }),
        design: { construction: 'squared-drop' },
      });
    expect(across(490)).toMatch(/^The body is hardly wider than the back: /);
    expect(across(520)).toMatch(/^The body is no wider than the back: /);
  });
});

describe('the weight', () => {
  /** A back p × 607.6 without its neck, by the shoelace formula over the outlines; bands are rectangles. */
  it('is the area of all pieces times the mass per area', () => {
    const fabric = fabricOf(3, { massPerAreaGsm: 1000 });
    const { pieces } = adviceInWords({ fabric });
    const grams = pieces.reduce((sum, { outline, make }) => {
      const corners = outline!.map(([x, y], i) => [x, y, ...outline![(i + 1) % outline!.length]!] as const);
      const area = corners.reduce((twice, [x1, y1, x2, y2]) => twice + x1! * y2! - x2! * y1!, 0) / 2;
      return sum + (make * area) / 1000;
    }, 0);
    expect(grams).toBeGreaterThan(900);
    expect(note('weight', { fabric })).toContain(`${Math.round(grams / 10) * 10} g`);
    expect(note('heavy', { fabric })).toMatch(/600 g/);
    expect(note('heavy', { fabric: fabricOf(3, { massPerAreaGsm: 300 }) })).toBeUndefined();
    expect(note('weight', {})).toBeUndefined();
  });
});

describe('a measure of the garment that fits', () => {
  const waits = (measures: Parameters<typeof garmentOf>[0], design: Differs['design'] = {}) =>
    note('garment-measure-waits', {
      garment: garmentOf(measures, { construction: 'raglan' }),
      design: { basis: 'both', ...design },
    });

  it('that tells nothing alone says what it waits for', () => {
    const sleeved = { 'chest-width': 505, 'sleeve-length': 480 };
    expect(waits(sleeved)).toMatch(/^The sleeve length .* without its neck width: /);
    expect(waits(sleeved, { silhouette: 'vest' })).toBeUndefined();
    expect(waits(sleeved, { basis: 'body' })).toBeUndefined();
  });
});

describe('a garment that fits', () => {
  it('whose hem is the wider is named for a straight hem’s width', () => {
    const garment = garmentOf({ 'chest-width': 480, 'hem-width': 540 });
    const design = { basis: 'garment', length: 'regular' } as const;
    expect(note('hip-governs', { garment, design })).toMatch(
      /and the garment that fits is wider there than at its chest/,
    );
    expect(note('hip-governs', { body: womanWith({ 'hip-girth': 1100 }) })).toMatch(
      /and the hip is wider than the chest/,
    );
  });

  it('worn stretched, asks the new fabric to stretch as much', () => {
    const garment = garmentOf({ 'chest-width': 430 }, { wornStretched: true });
    // I = 860 − 12: 940/848 − 1 = 10.8 %.
    expect(note('worn-stretched', { garment, design: { basis: 'garment', length: 'cropped' } })).toMatch(/11 %/);
    const hardly = garmentOf({ 'chest-width': 474 }, { wornStretched: true });
    // I = 948 − 12: 0.4 %.
    expect(note('worn-stretched', { garment: hardly, design: { basis: 'garment', length: 'cropped' } })).toMatch(
      /must stretch a little all the time/,
    );
  });
});

describe('what several garments say', () => {
  const said = (code: string, params: object) => text('note', { code, params } as NoteMessage, { tape: 'cm' });

  it('asks about one that contradicts the tape, by its name or its number', () => {
    const params = { measure: 'chest-width', moreMm: -128, uMm: 27 };
    expect(said('garment-beside-tape', { ...params, garment: 'The blue one' })).toMatch(
      /^By the chest width of “The blue one” the body would be 12\.8 cm smaller \(± 2\.7 cm\) there than your own measures say\..*\?.*your own measures count\.$/,
    );
    expect(said('garment-beside-tape', { ...params, garment: '2' })).toMatch(/of garment 2 /);
  });

  it('asks about two that contradict one another', () => {
    const params = { garments: ['1', 'Red'], measure: 'sleeve-length', moreMm: 61, uMm: 20 };
    expect(said('garments-apart', params)).toMatch(
      /^By the sleeve length of “Red” the body would be 6\.1 cm larger \(± 2 cm\) there than by that of garment 1\./,
    );
  });

  it('names the ease of those that she likes', () => {
    expect(said('ease-of-favourites', { count: 3, meanMm: 84, sdMm: 41 })).toBe(
      'Ease as in the 3 garments that you like to wear: 8.4 cm, give or take 4.1 cm.',
    );
  });
});
