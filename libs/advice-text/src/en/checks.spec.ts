import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitRequest } from '../../../../tests/support/fit-requests.ts';
import {
  bodyOf,
  check,
  fabricOf,
  garmentOf,
  made,
  mm,
  WOMAN,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import type { BodyDimension } from '#body';
import type { Tape } from '#advice-text';
import type { CheckName, Design, FitRequest } from '#fit';
import type { AdviceInWords } from '#target-sheet';
import { adviceInWords, inWords } from '../../../../tests/support/advice-in-words.ts';

const WOMAN_BODY = bodyOf(WOMAN);

/** A fabric that gives as an ordinary one does, and was pulled. */
const stretchy = fabricOf(3, { stretch: { across: 0.2, along: 0 } });

/** A neck that is not to open. */
const CLOSED = { at: 'none', lengthMm: null } as const;

const said = (name: CheckName, differs: Differs = {}, tape?: Tape): string =>
  check(adviceInWords(differs, tape), name).advice;

describe('the line beside a check', () => {
  it('is a sentence for every check of every sheet', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const { advice } of inWords(request).checks) {
          expect(advice).toMatch(/^[A-Z].*\.$/);
          expect(advice).not.toMatch(/NaN|undefined|false|\b0 (cm|in)\b.*past|  /);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('says by how much it fails, or how little there is to spare, as the tape is marked', () => {
    const design = { neckWidthMm: 120, frontNeckDepthMm: 40, backNeckDepthMm: 10, opening: CLOSED };
    expect(said('head-through-neck', { design })).toMatch(
      /^The neck will not pass the head, with \d+(\.\d)? cm of girth missing: make it/,
    );
    expect(said('head-through-neck', { design }, 'in')).toMatch(
      /will not pass the head, with [\d /]+ in of girth missing: /,
    );
    // 2 × 447 − 12 = 882, stretched by a tenth 970.2; 940 + (1060 − 940)/4 = 970.
    expect(said('over-the-shoulders', { design: { ease: { mm: -46 }, length: 'cropped' } })).toMatch(
      /^It goes on over the shoulders, with only a hair to spare if the fabric stretches as knitting usually does: choose/,
    );
  });

  it('says that the usual stretch of the craft was taken where the fabric was not pulled', () => {
    expect(said('over-the-shoulders')).toBe(
      'It goes on over the shoulders if the fabric stretches as knitting usually does.',
    );
    const crochet = fabricOf(3, { craft: 'crochet' });
    expect(said('over-the-shoulders', { fabric: crochet })).toMatch(/ as crochet usually does\.$/);
    expect(said('over-the-shoulders', { fabric: stretchy })).toBe('It goes on over the shoulders.');
    const design = { ease: { mm: -125 } } as const;
    expect(said('over-the-shoulders', { design })).toMatch(
      /, with \d+(\.\d)? cm of girth missing if the fabric stretches as knitting usually does: choose more ease, a stretchier fabric or a cardigan\.$/,
    );
  });

  it('does not call a garment small beside a body that is not known', () => {
    const design = { basis: 'garment', length: 'custom', customLengthMm: 600 } as const;
    const copied = adviceInWords({ body: null, garment: garmentOf({ 'chest-width': 500 }), design });
    const { verdict, needs, advice } = check(copied, 'negative-ease');
    expect([verdict, needs]).toEqual(['unknown', ['chest-girth']]);
    expect(advice).toBe('Measure chest girth to know whether the fabric has to stretch.');
  });

  it('says something of a difference that no tape shows', () => {
    // (chest − 46 − 12) × 1.1 against chest + (1060 − chest)/4: nothing is over at 939.4.
    const hair = (chest: number) =>
      said('over-the-shoulders', {
        body: womanWith({ 'chest-girth': chest, 'hip-girth': 800 }),
        design: { ease: { mm: -46 } },
      });
    expect(hair(939.8)).toMatch(/, with only a hair to spare if/);
    expect(hair(939)).toMatch(/, with a hair missing if/);
  });

  it('asks for no measure that is there', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const { verdict, needs = [], advice } of inWords(request).checks) {
          if (verdict !== 'unknown' || needs.length === 0) continue;
          const names = needs.map((name) => name.replaceAll('-', ' '));
          expect(advice).toMatch(new RegExp(`^Measure ${names.join('(?:, | and )')} to know `));
          for (const name of needs) expect(request.body?.values[name]).toBeUndefined();
        }
      }),
      { numRuns: 100 },
    );
  });

  it('says so where it does not apply', () => {
    expect(said('upper-arm', { design: { silhouette: 'vest' } })).toBe('Does not apply to this design.');
  });
});

/** What a maker does who takes a cure at its word. */
const CURES: Readonly<Record<string, (request: FitRequest, advice: AdviceInWords) => readonly FitRequest[]>> = {
  'more ease': (request, advice) => eased(request, advice, 5),
  'less ease': (request, advice) => eased(request, advice, -5),
  'let the hem fall straight': (request) => [designed(request, { hem: 'straight' })],
  'a shallower rib': (request, advice) => [designed(request, { ribMm: 0.5 * mm(advice, 'rib-depth') })],
  'its rib or': (request, advice) => [designed(request, { ribMm: 0.5 * mm(advice, 'rib-depth') })],
  'its rib shallower': (request, advice) => [designed(request, { ribMm: 0.5 * mm(advice, 'rib-depth') })],
  'bands shallower': (request, advice) => {
    const changes = check(advice, 'neck-on-shoulders').remedies!.map(({ change }) => change['bandMm'] as number);
    return changes.filter((bandMm) => bandMm !== undefined).map((bandMm) => designed(request, { bandMm }));
  },
  'make it narrower': (request, advice) => [designed(request, { neckWidthMm: 0.7 * mm(advice, 'neck-width') })],
  'make the neck narrower': (request, advice) => [designed(request, { neckWidthMm: 0.7 * mm(advice, 'neck-width') })],
  'make it shallower': (request, advice) => [
    designed(request, { frontNeckDepthMm: 0.7 * mm(advice, 'front-neck-depth') }),
  ],
  'stretchier fabric': (request) => [{ ...request, fabric: stretchier(request.fabric) }],
  'a fabric that stretches more': (request) => [{ ...request, fabric: stretchier(request.fabric) }],
};

const designed = (request: FitRequest, design: Partial<Design>): FitRequest => ({
  ...request,
  design: { ...request.design, ...design },
});

/** More ease is chosen, or wished beside a garment that fits: a little, or less where another region comes to govern by that. */
function eased(request: FitRequest, { design }: AdviceInWords, most: number): readonly FitRequest[] {
  const { ease } = request.design;
  return [most, most / 10, most / 100].map((by) =>
    designed(request, {
      ease: 'as' in ease ? { ...ease, changeMm: ease.changeMm + by } : { mm: (design.ease.chosen ?? 0) + by },
    }),
  );
}

function stretchier(fabric: FitRequest['fabric']): FitRequest['fabric'] {
  const along = fabric.stretch?.along ?? 0;
  const mainUsable = fabric.mainUsable + 0.1;
  return { ...fabric, mainUsable, stretch: { across: 2 * mainUsable, along } };
}

describe('what it says to change can help', () => {
  it('each cure makes the margin larger, where nothing has to be worked again', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const advice = inWords(request);
        for (const before of advice.checks) {
          if (!['fails', 'poor', 'tight'].includes(before.verdict)) continue;
          const change = before.advice.slice(before.advice.lastIndexOf(': '));
          if (change.includes('again')) continue;
          for (const [cure, take] of Object.entries(CURES)) {
            if (!change.includes(cure)) continue;
            const margins = take(request, advice).map((cured) => check(inWords(cured), before.check).margin);
            // A change may do away with the check.
            const helped = margins.some((margin) => margin === undefined || margin > before.margin! + 1e-6);
            expect(helped, `${before.check}: ${cure}`).toBe(true);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  it('at the upper arm: a fabric where a close fit counts its stretch; a sleeve as made is worked again', () => {
    const body = womanWith({ 'upper-arm-girth': 330 });
    const wide = { body, design: { construction: 'set-in', ease: { mm: -100 }, length: 'cropped' } } as const;
    expect(said('upper-arm', { ...wide, fabric: stretchy })).toMatch(
      /: choose more ease or a fabric that stretches more\.$/,
    );
    const classic = { ...wide, design: { ...wide.design, ease: { mm: 75 } } };
    expect(said('upper-arm', { ...classic, made: [made('sleeve/sleeve-top-width', 300)] })).toMatch(
      /: work the sleeve again, wider\.$/,
    );
  });

  it('at a hip that takes no more ease: a stretchier fabric, or a shorter length', () => {
    // A hip wider than the chest takes 25 of ease at most, and a fabric that does not give only 20 more: 1090 of 1123.
    const design = { ease: { mm: 75 } } as const;
    const body = bodyOf({ ...WOMAN, 'hip-girth': 1090 }, 'woman', { 'hip-girth': 40 });
    const tight = { design, fabric: fabricOf(3, { stretch: { across: 0, along: 0 } }), body };
    expect(check(adviceInWords(tight), 'hip').verdict).toBe('tight');
    expect(said('hip', tight)).toMatch(/: choose a stretchier fabric or a shorter length\.$/);
  });

  it('of a body already made: to work it again', () => {
    const narrow = { made: [made('back/width', 430)], fabric: stretchy };
    expect(said('over-the-shoulders', narrow)).toMatch(
      /: work the body again, wider or in a fabric that stretches more\.$/,
    );
    expect(said('over-the-shoulders', { fabric: stretchy })).not.toContain('again');
  });

  it('of a piece already made: the piece that would have to be worked again', () => {
    const short = { made: [made('back/body-to-underarm', 40)], design: { ribMm: 30 } };
    expect(said('body-below-underarm', short)).toMatch(/: work the body again, longer\.$/);
    const body = womanWith({ 'scye-girth': 560, 'upper-arm-girth': 330 });
    expect(said('armhole', { body, made: [made('sleeve/sleeve-top-width', 480)] })).toMatch(
      /: work the sleeve again, wider at its top\.$/,
    );
    expect(said('upper-arm', { body, made: [made('back/armhole-depth', 150)] })).toMatch(
      /: work the body again, with a deeper armhole\.$/,
    );
    const long = { made: [made('back/width', 480)], body: womanWith({ 'hip-girth': 1200 }) };
    expect(said('hip', long)).toMatch(/: work the body again, wider or shorter\.$/);
    const front = { made: [made('front/width', 506)], body: womanWith({ 'front-waist-length': 500 }) };
    expect(said('front-and-back', front)).toMatch(/: work the front again, with short rows across it\.$/);
  });

  it('of a garment that is taken over: to make it larger than that', () => {
    // It is deep enough by a margin, which an arm that is hardly known may still outgrow.
    const garment = garmentOf({ 'chest-width': 500, 'armhole-depth': 150 });
    const design = { basis: 'both', construction: 'set-in' } as const;
    const body = bodyOf({ ...WOMAN, 'scye-girth': 560 }, 'woman', { 'scye-girth': 30 });
    expect(said('armhole', { garment, design, body })).toMatch(/: make it deeper than on the garment that fits\.$/);
  });

  it('of a length that may come down to the hip: the measure that would tell', () => {
    const garment = garmentOf({ 'chest-width': 400, 'hem-width': 400 });
    const design = { basis: 'garment', length: 'custom', customLengthMm: 600 } as const;
    const body = womanWith({ 'back-waist-length': undefined, 'back-hip-length': undefined });
    const fabric = fabricOf(3, { stretch: { across: 0, along: 0 } });
    expect(said('hip', { garment, design, body, fabric })).toMatch(
      /, or measure back waist length, which tells whether the body comes down to the hip\.$/,
    );
  });

  it('of a neck that was to stay closed: to let it open', () => {
    const design = { neckWidthMm: 100, frontNeckDepthMm: 30, backNeckDepthMm: 10, opening: CLOSED } as const;
    const head = check(adviceInWords({ design }), 'head-through-neck');
    expect(head.advice).toMatch(/(, or|:) let the neck open\.$/);
    expect(head.remedies?.map(({ text }) => text)).toContain('Let the neck open at one shoulder');
  });

  it('of a cuff of her own that passes no hand: to make it wider', () => {
    const cuff = check(adviceInWords({ design: { cuffWidthMm: 60 } }), 'hand-through-cuff');
    expect(cuff.verdict).toBe('fails');
    expect(cuff.advice).toMatch(/: make it wider, or its rib stretchier\.$/);
    expect(cuff.remedies?.[0]?.text).toMatch(/^Make the cuff [\d.]+ cm wider$/);
  });

  it('of a hem that follows the hip and is the narrowest: let it fall straight', () => {
    const body = womanWith({ 'hip-girth': 900, 'shoulder-girth': 1060 });
    const tapered = { body, fabric: stretchy, design: { hem: 'tapered', ease: { mm: 100 } } } as const;
    const over = check(
      adviceInWords({ ...tapered, fabric: fabricOf(3, { stretch: { across: 0, along: 0 } }) }),
      'over-the-shoulders',
    );
    expect(over.verdict).toBe('fails');
    expect(over.advice).toMatch(/: let the hem fall straight, or choose a stretchier fabric or a cardigan\.$/);
    expect(over.remedies).toMatchObject([{ text: 'Let the hem fall straight', change: { hem: 'straight' } }]);
  });

  it('of a short sleeve: less ease, which leaves more of it, and a shallower rib where that is enough', () => {
    const arm = (nape: number) => womanWith({ 'nape-to-cuff': nape, 'underarm-length': nape - 311 });
    const short = { body: arm(390), design: { construction: 'set-in', ribMm: 100 } } as const;
    const { margin, advice } = check(adviceInWords(short), 'sleeve-below-underarm');
    expect(advice).toMatch(/: choose less ease or a longer sleeve\.$/);
    const nearly = { ...short, body: arm(450) };
    expect(said('sleeve-below-underarm', nearly)).toMatch(/: choose less ease, a shallower rib or a longer sleeve\.$/);
    const closer = { ...short, design: { ...short.design, ease: { mm: 50 } } };
    expect(check(adviceInWords(closer), 'sleeve-below-underarm').margin).toBeGreaterThan(margin!);
  });

  it('of a front hardly longer than its back: to measure with care before short rows', () => {
    expect(said('front-and-back', { body: womanWith({ 'front-waist-length': 461.9 }) })).toMatch(
      /^Front and back can be the same length, though not surely: measure front and back waist length with care/,
    );
    expect(said('front-and-back', { body: womanWith({ 'front-waist-length': 500 }) })).toMatch(/: work short rows/);
  });

  it('of a cuff of her own that a hand does not hold: to make it closer, or to fold it back', () => {
    const wide = { design: { cuffWidthMm: 130 } };
    const stays = check(adviceInWords(wide), 'cuff-stays');
    expect(stays.verdict).toBe('poor');
    expect(stays.advice).toMatch(
      /^The cuff is [\d.]+ cm wider round than the hand and will slide over it: make it closer/,
    );
    expect(stays.remedies?.[0]?.text).toMatch(/^Make the cuff [\d.]+ cm narrower$/);
    const rigid = { ...wide, fabric: fabricOf(3, { ribStretch: 0 }) };
    expect(said('cuff-stays', rigid)).toMatch(/: plan to fold it back, or work a stretchier rib and make it closer\.$/);
    expect(said('cuff-stays', { made: [made('sleeve/cuff-width', 260)] })).toMatch(/: plan to fold it back\.$/);
  });
});

describe('a measure that was not taken', () => {
  const guess = { value: 990, u: 60, how: 'estimated', from: 'estimated' } as const;
  const guessed = (name: BodyDimension, value: number, u: number): Differs => ({
    body: { ...WOMAN_BODY, values: { ...WOMAN_BODY.values, [name]: { ...guess, value, u } } },
  });

  it('comes before a change of the design, where its doubt alone is the cause', () => {
    expect(said('hip', guessed('hip-girth', 990, 90))).toMatch(
      /^The hem clears the hip, with [\d.]+ cm of girth to spare if the fabric stretches as knitting usually does, but hip girth was not measured: measure that, or choose /,
    );
    expect(check(adviceInWords(guessed('hip-girth', 990, 90)), 'hip').needs).toEqual(['hip-girth']);
    expect(said('front-and-back', guessed('front-waist-length', 450, 30))).toBe(
      'Front and back can be the same length, but front waist length was not measured: measure that before you decide on short rows.',
    );
  });

  it('is not asked for where there is too little to spare all the same', () => {
    const close = { ...guessed('shoulder-girth', 1060, 60), design: { ease: { mm: -46 }, length: 'cropped' } } as const;
    expect(said('over-the-shoulders', close)).toMatch(/, with only a hair to spare if/);
  });

  it('is not asked for of a size of a table, of which none was taken', () => {
    const values = Object.fromEntries(
      Object.entries(WOMAN_BODY.values).map(([name, known]) => [name, { ...known, u: 30, how: 'table' as const }]),
    );
    for (const { advice } of adviceInWords({ body: { ...WOMAN_BODY, values } }).checks)
      expect(advice).not.toMatch(/was not measured/);
  });
});

describe('advice of two checks', () => {
  it('does not make an armhole shallower that hardly clears the shoulder', () => {
    const body = bodyOf({ ...WOMAN, 'scye-girth': 470 }, 'woman', { 'scye-girth': 17 });
    const differs = { body, design: { length: 'custom', customLengthMm: 250, ribMm: 50 } } as const;
    expect(check(adviceInWords(differs), 'armhole').verdict).toBe('tight');
    expect(said('body-below-underarm', differs)).not.toMatch(/armhole shallower/);
    expect(said('body-below-underarm', { design: differs.design })).toMatch(/armhole shallower/);
  });
});

describe('what it is about', () => {
  it('is the seam of a raglan where pieces were made apart, and its slopes by themselves', () => {
    const raglan = { design: { construction: 'raglan' } } as const;
    expect(said('seam', raglan)).toBe('Does not apply to this design.');
    expect(said('raglan-slope', raglan)).toMatch(/^The raglan slopes alike on sleeve and body/);
    const apart = { ...raglan, made: [made('back/width', 500), made('front/width', 505)] };
    expect(said('seam', apart)).toMatch(/^The edges that join /);
  });

  it('is the seam that is worst off, where pieces were made apart', () => {
    const widths = [made('back/width', 500), made('front/width', 480)];
    expect(said('seam', { made: widths })).toBe(
      'The widths of back and front differ by 2 cm: ease one into the other, or work one again.',
    );
    const worse = [...widths, made('back/armhole-depth', 250), made('sleeve/sleeve-top-width', 440)];
    expect(said('seam', { made: worse })).toMatch(/^The armhole and the top of the sleeve differ by 6 cm: /);
  });

  it('is the shoulder beside the neck where that is scarcer than what carries it', () => {
    const bare = { design: { construction: 'set-in', neckWidthMm: 330 } } as const;
    expect(said('neck-on-shoulders', bare)).toMatch(
      /^Too little shoulder is left beside the neck, with [\d.]+ cm missing: /,
    );
  });

  it('is which way a made sleeve misses, and by how much', () => {
    const reaching = (mm: number) => said('nape-to-cuff', { made: [made('sleeve/sleeve-length', mm)] });
    expect(reaching(400)).toMatch(/^The sleeve as made ends [\d.]+ cm short of the cuff as wished: add to the cuff\.$/);
    expect(reaching(600)).toMatch(/^The sleeve as made ends [\d.]+ cm past the cuff as wished: fold the cuff/);
  });

  it('is what is worn beneath too, where that is', () => {
    const close = { ease: { mm: -100 }, length: 'cropped' } as const;
    const over = { ...close, layer: { thicknessMm: 4, u: 1, sleeves: 'long' } } as const;
    expect(said('negative-ease', { design: close })).toMatch(/^The garment is smaller than the body, and its fabric/);
    expect(said('negative-ease', { design: over })).toMatch(
      /^The garment is smaller than the body and what is worn beneath, and its fabric/,
    );
  });
});
