import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DomainError } from '#measure';
import { plannedRequest } from '../../../../tests/support/fit-requests.ts';
import {
  adviceOn,
  check,
  dimension,
  everyDimension,
  made,
  mm,
  PLAIN,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import { advise } from '../advice/advise.ts';
import type { Design } from '../design/design.ts';
import type { MadeUnfit } from '../design/fit-errors.ts';
import { MADE_MEASURES, readMade } from './made.ts';

function refusal(differs: Differs): DomainError {
  try {
    adviceOn(differs);
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error('It was taken in.');
}

describe('reading finished pieces', () => {
  const read = (path: string, value: number, design: Partial<Design> = {}) =>
    readMade([made(path, value)], { ...PLAIN, ...design }, 40, 10);

  it('says which number each fixes', () => {
    const { made: kinds, inputs } = read('back/width', 510);
    expect(Object.entries(kinds).filter(([, is]) => is)).toEqual([['back', true]]);
    expect(inputs.get('madeBack')).toEqual({
      entered: 510,
      value: 510,
      term: { code: 'made-piece', params: { piece: 'back' } },
    });
  });

  /** A left front 240 wide, its band of 40 and half of the overlap of 10 beside it: 2 × (240 + 40) − 10. */
  it('takes a half front for the panel that it stands for', () => {
    expect(read('left-front/width', 240, { silhouette: 'cardigan' }).inputs.get('madeFront')).toEqual({
      entered: 240,
      value: 550,
      term: { code: 'made-half-front', params: { piece: 'left-front' } },
    });
  });

  it('takes two measures of one number where they agree', () => {
    const cardigan = { ...PLAIN, silhouette: 'cardigan' } as const;
    const both = [made('left-front/width', 240), made('right-front/width', 240)];
    expect(readMade(both, cardigan, 40, 10).inputs.size).toBe(1);
  });
});

describe('a finished piece that cannot be taken in', () => {
  it('is one with a name it does not have; the refusal lists those there are', () => {
    const error = refusal({ made: [made('back/width', 500), made('back/cap-height', 90)] });
    const params = { name: 'back/cap-height', known: MADE_MEASURES };
    expect(error).toMatchObject({ code: 'made-unknown', pointer: '/made/1', params });
  });

  it('is a second opinion on the same number', () => {
    const error = refusal({ made: [made('back/armhole-depth', 240), made('back/armhole-depth', 250)] });
    const params = { name: 'back/armhole-depth', earlierMm: 240 };
    expect(error).toMatchObject({ code: 'made-twice', pointer: '/made/1', params });
  });

  it('is told in the words of what was entered, though a half front stands for a whole', () => {
    const cardigan = { design: { silhouette: 'cardigan' } } as const;
    const error = refusal({ ...cardigan, made: [made('left-front/width', 240), made('right-front/width', 250)] });
    expect(error.params).toEqual({ name: 'right-front/width', earlierMm: 240 });
  });

  it.each<[string, Partial<Design>, MadeUnfit]>([
    ['front/width', { silhouette: 'cardigan' }, 'front-of-cardigan'],
    ['left-front/width', {}, 'half-front'],
    ['sleeve/cuff-width', { silhouette: 'vest' }, 'sleeve-of-vest'],
    ['sleeve/cap-height', { construction: 'raglan' }, 'cap-without-set-in'],
    ['sleeve/sleeve-raglan-depth', { construction: 'set-in' }, 'sleeve-raglan-without-raglan'],
    ['back/armhole-depth', { construction: 'raglan' }, 'armhole-of-raglan'],
    ['back/raglan-depth', { construction: 'set-in' }, 'raglan-without-raglan'],
  ])('is %s of another design', (path, design, why) => {
    const error = refusal({ design, made: [made(path, 200)] });
    expect(error).toMatchObject({ code: 'made-unfit', pointer: '/made/0', params: { name: path, why } });
  });
});

describe('a piece made', () => {
  it('just as planned changes no number, and leaves its own nothing to round', () => {
    fc.assert(
      fc.property(plannedRequest, fc.constantFrom(...MADE_MEASURES), (request, path) => {
        const planned = advise(request);
        const [piece, name] = path.split('/');
        const its = planned.pieces.find((one) => one.piece === piece)?.dimensions.find((one) => one.name === name);
        fc.pre(its !== undefined && its.value !== null);
        // Of a neck that opens, a width that is fixed leaves its depth to grow instead.
        fc.pre(name !== 'neck-width' || planned.design.opening.at === 'none');
        const after = advise({ ...request, made: [made(path, its.value)] });
        const given = everyDimension(planned).filter(([, { value }]) => value !== null);
        for (const [place, { value }] of given) expect(mm(after, place), place).toBeCloseTo(value!, 5);
        const { low, high } = dimension(after, path);
        expect([low, high], path).toEqual([expect.closeTo(its.value, 9), expect.closeTo(its.value, 9)]);
      }),
      { numRuns: 200 },
    );
  });

  it('d wider makes the girth 2d wider, and the ease with it', () => {
    const wider = fc.double({ min: -60, max: 60, noNaN: true });
    fc.assert(
      fc.property(plannedRequest, wider, (request, d) => {
        const planned = advise(request);
        const panel = mm(planned, 'back/width');
        fc.pre(!Number.isNaN(panel));
        const after = advise({ ...request, made: [made('back/width', panel + d)] });
        expect(2 * (mm(after, 'chest-width') - mm(planned, 'chest-width'))).toBeCloseTo(2 * d, 6);
        const { tableTerms } = planned.design.ease;
        if (tableTerms !== null) expect(after.design.ease.tableTerms).toBeCloseTo(tableTerms + 2 * d, 6);
      }),
      { numRuns: 100 },
    );
  });

  /** 20 wider: half of it inside the body on each side, so the drop sleeve is 10 shorter. */
  it('20 too wide takes 10 off a drop shoulder’s sleeve', () => {
    const planned = adviceOn();
    const after = adviceOn({ made: [made('back/width', mm(planned, 'back/width') + 20)] });
    expect(mm(planned, 'sleeve-length') - mm(after, 'sleeve-length')).toBeCloseTo(10, 9);
  });
});

describe('pieces made apart', () => {
  it.each(['drop-shoulder', 'squared-drop', 'set-in'] as const)(
    'of a %s have each its own shoulders',
    (construction) => {
      const advice = adviceOn({ design: { construction }, made: [made('back/width', 540), made('front/width', 570)] });
      for (const piece of ['back', 'front']) {
        const across = 2 * mm(advice, `${piece}/shoulder-width`) + mm(advice, `${piece}/neck-width`);
        expect(across).toBeCloseTo(mm(advice, `${piece}/cross-back-width`), 9);
      }
    },
  );

  /** A drop's armhole of 250 has a seam of 500; a sleeve 470 wide is 30 short of it, allowed max(10, 0.03 × 500 = 15). */
  it('are checked where they meet', () => {
    const pieces = [made('back/armhole-depth', 250), made('sleeve/sleeve-top-width', 470)];
    const advice = adviceOn({ made: pieces });
    expect(check(advice, 'seam')).toMatchObject({ need: 30, have: 15, verdict: 'fails' });
    expect(advice.collisions).toContainEqual({
      piece: 'back',
      dimension: 'width',
      wishes: ['edges-join', 'pieces-as-made'],
    });
  });

  /** A front's armhole of 270 beside a back's of 250: 20 apart, of max(10, 0.03 × 270 = 8.1). The back's counts for the rest. */
  it('are checked where back and front meet, and nothing is averaged', () => {
    const pieces = [made('front/armhole-depth', 270), made('back/armhole-depth', 250)];
    const advice = adviceOn({ made: pieces });
    expect(check(advice, 'seam')).toMatchObject({ need: 20, have: 10, verdict: 'fails' });
    expect(mm(advice, 'armhole-depth')).toBe(250);
    expect(mm(adviceOn({ made: [made('front/armhole-depth', 270)] }), 'armhole-depth')).toBe(270);
    const sides = [made('back/body-to-underarm', 350), made('front/body-to-underarm', 356)];
    expect(check(adviceOn({ made: sides }), 'seam')).toMatchObject({ need: 6, have: 356 * 0.03, verdict: 'fine' });
  });

  /** N − Y/2 is planned; made 25 longer it reaches 25 too far, of 10 allowed. */
  it('reach from nape to cuff as far as they do', () => {
    const planned = mm(adviceOn(), 'sleeve-length');
    const far = check(adviceOn({ made: [made('sleeve/sleeve-length', planned + 25)] }), 'nape-to-cuff');
    expect(far).toMatchObject({ need: expect.closeTo(25, 9), have: 10, verdict: 'fails' });
    expect(check(adviceOn(), 'nape-to-cuff').verdict).toBe('n/a');
  });
});
