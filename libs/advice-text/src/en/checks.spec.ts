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
    const design = { neckWidthMm: 120, frontNeckDepthMm: 40, backNeckDepthMm: 10 };
    expect(said('head-through-neck', { design })).toMatch(
      /^The neck will not pass the head, with \d+(\.\d)? cm of girth missing: make it/,
    );
    expect(said('head-through-neck', { design }, 'in')).toMatch(
      /will not pass the head, with [\d /]+ in of girth missing: /,
    );
    expect(said('over-the-shoulders')).toMatch(
      /^It goes on over the shoulders, with only 0.3 cm of girth to spare: choose/,
    );
  });

  it('asks for the fabric where the body is known and only a stretch could help', () => {
    const design = { ease: { mm: -75 } } as const;
    expect(said('over-the-shoulders', { design })).toMatch(
      /, with \d+(\.\d)? cm of girth missing unless the fabric stretches: pull the swatch across and measure its stretch\.$/,
    );
    expect(said('negative-ease', { design })).toBe(
      'The garment is smaller than the body: pull the swatch across and measure its stretch.',
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
    const hair = (chest: number) =>
      said('over-the-shoulders', { body: womanWith({ 'chest-girth': chest, 'hip-girth': 800 }) });
    // (chest + 63) against (chest + 1060)/2: nothing is over at 934.
    expect(hair(934.2)).toMatch(/, with only a hair to spare: /);
    expect(hair(933.8)).toMatch(/, with a hair missing unless the fabric stretches: /);
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
  return [most, most / 10, most / 100].flatMap((by) => [
    designed(request, { ease: { mm: (design.ease.chosen ?? 0) + by } }),
    designed(request, { easeChangeMm: request.design.easeChangeMm + by }),
  ]);
}

function stretchier(fabric: FitRequest['fabric']): FitRequest['fabric'] {
  const { across, along } = fabric.stretch ?? { across: 0, along: 0 };
  return { ...fabric, stretch: { across: across + 0.2, along } };
}

describe('what it says to change can help', () => {
  it('each cure makes the margin larger, where nothing has to be worked again', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const advice = inWords(request);
        for (const before of advice.checks) {
          if (before.verdict !== 'fails' && before.verdict !== 'tight') continue;
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

  const stretchy = fabricOf(3, { stretch: { across: 0.2, along: 0 } });

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

  it('at a hip that takes no more ease: a shorter length', () => {
    // A hip wider than the chest takes 25 of ease at most, and the fabric 12 of it: 13 are left.
    const design = { ease: { mm: 75 } } as const;
    const tight = { design, fabric: fabricOf(3), body: womanWith({ 'hip-girth': 1090 }) };
    expect(check(adviceInWords(tight), 'hip').verdict).toBe('tight');
    expect(said('hip', tight)).toMatch(/: choose a shorter length\.$/);
  });

  it('of a body already made: to work it again', () => {
    const narrow = { made: [made('back/width', 430)], fabric: stretchy };
    expect(said('over-the-shoulders', narrow)).toMatch(
      /: work the body again, wider or in a fabric that stretches more\.$/,
    );
    expect(said('over-the-shoulders', { fabric: stretchy })).not.toContain('again');
  });

  it('of a piece already made: the piece that would have to be worked again', () => {
    const short = { made: [made('back/body-to-underarm', 40)] };
    expect(said('body-below-underarm', short)).toMatch(/: work the body again, longer\.$/);
    const body = womanWith({ 'scye-girth': 560, 'upper-arm-girth': 330 });
    expect(said('armhole', { body, made: [made('sleeve/sleeve-top-width', 480)] })).toMatch(
      /: work the sleeve again, wider at its top\.$/,
    );
    expect(said('upper-arm', { body, made: [made('back/armhole-depth', 150)] })).toMatch(
      /: work the body again, with a deeper armhole\.$/,
    );
    const long = { made: [made('back/body-to-underarm', 500)], body: womanWith({ 'hip-girth': 1200 }) };
    expect(said('hip', { ...long, design: { hem: 'tapered', length: 'cropped' } })).toMatch(
      /: work the body again, wider or shorter\.$/,
    );
    const front = { made: [made('front/width', 506)], body: womanWith({ 'front-waist-length': 500 }) };
    expect(said('front-and-back', front)).toMatch(/: work the front again, with short rows across it\.$/);
  });

  it('of a garment that is taken over: to make it larger than that', () => {
    const garment = garmentOf({ 'chest-width': 500, 'cuff-width': 70, 'armhole-depth': 150 });
    const design = { basis: 'both', construction: 'set-in' } as const;
    const body = womanWith({ 'scye-girth': 560 });
    expect(said('hand-through-cuff', { garment, design, body })).toMatch(
      /: make it wider than on the garment that fits/,
    );
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

  it('of a neck that is to open: buttons, but none for a baby', () => {
    const design = { neckWidthMm: 100, frontNeckDepthMm: 30, backNeckDepthMm: 10 } as const;
    expect(said('head-through-neck', { design })).toMatch(/, or leave a shoulder open with buttons\.$/);
    const raglan = { ...design, construction: 'raglan' } as const;
    expect(said('head-through-neck', { design: raglan })).toMatch(/, or leave a raglan seam open with buttons\.$/);
    const baby = bodyOf({ ...WOMAN, 'chest-girth': 460, 'head-girth': 450 }, 'baby');
    expect(said('head-through-neck', { design, body: baby })).toMatch(
      /, or let the shoulders overlap and open, without buttons\.$/,
    );
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
    const short = { body: womanWith({ 'nape-to-cuff': 420 }), design: { construction: 'set-in', ribMm: 100 } } as const;
    const { margin, advice } = check(adviceInWords(short), 'sleeve-below-underarm');
    expect(advice).toMatch(/: choose less ease or a longer sleeve\.$/);
    const nearly = { ...short, body: womanWith({ 'nape-to-cuff': 480 }) };
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

  it('of a cuff: to make it closer only where its rib would pass the hand then', () => {
    const body = womanWith({ 'hand-girth': 172 });
    const stiff = { body, fabric: fabricOf(3, { ribStretch: 0 }) };
    expect(said('cuff-stays', stiff)).toMatch(/: plan to fold it back, or work a stretchier rib and make it closer\.$/);
    expect(said('cuff-stays', { body })).toMatch(
      /^The cuff stays above the hand, though not surely: make it closer, or plan to fold it back\.$/,
    );
    expect(said('cuff-stays', { body: womanWith({ 'hand-girth': 165 }) })).toMatch(
      /^The cuff is about as wide as the hand and may slide over it: make it closer/,
    );
    const barely = fabricOf(3, { ribStretch: 0.3 });
    expect(said('cuff-stays', { body: womanWith({ 'hand-girth': 165 }), fabric: barely })).toMatch(/: plan to fold it/);
    expect(said('cuff-stays', { body: womanWith({ 'hand-girth': 130 }) })).toMatch(
      /^The cuff is [\d.]+ cm wider round than the hand and will slide over it: /,
    );
    expect(said('cuff-stays', { made: [made('sleeve/cuff-width', 260)] })).toMatch(/: plan to fold it back\.$/);
  });
});

describe('a measure that was not taken', () => {
  const guess = { value: 990, u: 60, how: 'estimated', from: 'estimated' } as const;
  const guessed = (name: BodyDimension, value: number, u: number): Differs => ({
    body: { ...WOMAN_BODY, values: { ...WOMAN_BODY.values, [name]: { ...guess, value, u } } },
  });

  it('comes before a change of the design, where its doubt alone is the cause', () => {
    expect(said('hip', guessed('hip-girth', 960, 60))).toMatch(
      /^The hem clears the hip, with [\d.]+ cm of girth to spare, but hip girth was not measured: measure that, or choose more ease or a shorter length\.$/,
    );
    expect(check(adviceInWords(guessed('hip-girth', 960, 60)), 'hip').needs).toEqual(['hip-girth']);
    expect(said('front-and-back', guessed('front-waist-length', 450, 30))).toBe(
      'Front and back can be the same length, but front waist length was not measured: measure that before you decide on short rows.',
    );
  });

  it('is not asked for where there is too little to spare all the same', () => {
    expect(said('over-the-shoulders', guessed('shoulder-girth', 1060, 60))).toMatch(/, with only 0.3 cm of girth to/);
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
  it('does not make a cuff closer that hardly passes the hand', () => {
    const differs = { body: bodyOf({ ...WOMAN, 'hand-girth': 165 }, 'woman', { 'hand-girth': 45 }) };
    expect(check(adviceInWords(differs), 'hand-through-cuff').verdict).toBe('tight');
    expect(said('cuff-stays', differs)).toMatch(/: plan to fold it back, or work a stretchier rib and make it closer/);
  });

  it('does not make an armhole shallower that hardly clears the shoulder', () => {
    const differs = {
      body: womanWith({ 'scye-girth': 470 }),
      design: { length: 'custom', customLengthMm: 280 },
    } as const;
    expect(check(adviceInWords(differs), 'armhole').verdict).toBe('tight');
    expect(said('body-below-underarm', differs)).not.toMatch(/armhole shallower/);
    expect(said('body-below-underarm', { design: differs.design })).toMatch(/armhole shallower/);
  });
});

describe('what it is about', () => {
  it('is the rise of a raglan’s own edges where nothing was made', () => {
    const raglan = { design: { construction: 'raglan' } } as const;
    expect(said('seam', raglan)).toMatch(/^The raglan rises /);
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
    const close = { ease: { mm: -10 }, length: 'cropped' } as const;
    const over = { ...close, layer: { thicknessMm: 4, u: 1, sleeves: 'long' } } as const;
    expect(said('negative-ease', { design: close })).toMatch(/^The garment is smaller than the body: /);
    expect(said('negative-ease', { design: over })).toMatch(
      /^The garment is smaller than the body and what is worn beneath: /,
    );
  });
});
