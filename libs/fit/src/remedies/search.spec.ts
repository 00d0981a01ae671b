import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fitRequest } from '../../../../tests/support/fit-requests.ts';
import {
  adviceOn,
  bodyOf,
  check,
  everyDimension,
  fabricOf,
  garmentOf,
  made,
  mm,
  requestOf,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import { BESIDES } from '../../../../tests/support/besides.ts';
import type { Check, CheckName } from '../messages/advice.ts';
import { advise } from '../advice/advise.ts';
import type { Design } from '../design/design.ts';
import type { FitRequest } from '../inputs/fit-request.ts';

type Change = NonNullable<Check['remedies']>[number]['change'];

/** The request with a remedy's change made to it, as a page would. */
function changed(request: FitRequest, change: Change): FitRequest {
  const design: Record<string, unknown> = { ...request.design };
  for (const [field, to] of Object.entries(change)) {
    if (field === 'easeMm') design['ease'] = { mm: to };
    else if (field === 'easeChangeMm') design['ease'] = { as: 'garment', changeMm: to };
    else if (field === 'opening') design['opening'] = { at: to, lengthMm: null };
    else design[field] = to;
  }
  return { ...request, design: design as unknown as Design };
}

/** Of about three months, invented. */
const BABY = {
  'chest-girth': 440,
  'hip-girth': 460,
  'back-waist-length': 170,
  'across-back': 175,
  'nape-to-cuff': 270,
  'upper-arm-girth': 150,
  'wrist-girth': 110,
  'hand-girth': 125,
  'scye-depth': 80,
  'scye-girth': 170,
  'shoulder-girth': 500,
  'neck-base-girth': 235,
  'head-girth': 431,
};

const COMFORT: ReadonlySet<CheckName> = new Set([
  'cuff-stays',
  'under-the-arm',
  'neck-depth',
  'sleeve-taper',
  'front-and-back',
  'along-the-top',
  'raglan-slope',
  'seam',
]);
const isComfort = (name: CheckName): boolean => COMFORT.has(name);

const remedies = (differs: Differs, name: CheckName) => check(adviceOn(differs), name).remedies ?? [];

describe('a remedy', () => {
  it('makes its check hold, and by more than before', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const before of advise(request).checks)
          for (const { change } of before.remedies ?? []) {
            const after = check(advise(changed(request, change)), before.check);
            // A change may do away with the check, as a V that is shallow enough does.
            if (after.verdict === 'n/a') continue;
            expect(after.margin, before.check).toBeGreaterThan(Math.max(before.margin!, -1e-6));
          }
      }),
      { numRuns: 150 },
    );
  });

  it('makes no other check fail, nor one that fails already fail by more', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const before = advise(request);
        for (const { check: name, remedies = [] } of before.checks)
          for (const { code, change } of remedies) {
            const after = advise(changed(request, change));
            for (const { check: other, verdict } of before.checks) {
              const then = check(after, other).verdict;
              if (then === 'fails') expect(verdict, `${other} by ${name}: ${code}`).toBe('fails');
              if (then === 'unknown') expect(verdict, `${other} by ${name}: ${code}`).toBe('unknown');
            }
            for (const { check: other, margin } of before.checks)
              if (margin !== undefined && margin < 0 && !BESIDES.includes(other))
                expect(check(after, other).margin ?? 0, `${other} by ${code}`).toBeGreaterThanOrEqual(margin - 1e-5);
          }
      }),
      { numRuns: 150 },
    );
  });

  /** By the uncertainties of before: Φ⁻¹(0.95) = 1.645, of comfort Φ⁻¹(0.75) = 0.674; a little less for the making, which is a share of what there is. */
  const SURE = 1.6;
  const SURE_OF_COMFORT = 0.65;

  it('of a check that holds already leaves it little doubt, nor more to any other that was fine', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const before = advise(request);
        for (const { check: name, comfort, margin, u, remedies = [] } of before.checks)
          for (const { code, change } of margin! >= 0 ? remedies : []) {
            const after = advise(changed(request, change));
            expect(check(after, name).margin ?? Infinity, `${name} by ${code}`).toBeGreaterThan(
              (comfort ? SURE_OF_COMFORT : SURE) * u!,
            );
            for (const other of before.checks.filter(({ check, verdict }) => verdict === 'fine' && !isComfort(check))) {
              const then = check(after, other.check).margin ?? Infinity;
              const least = Math.min(other.margin! - 1e-5, SURE * other.u!);
              expect(then, `${other.check} by ${code}`).toBeGreaterThanOrEqual(least);
            }
          }
      }),
      { numRuns: 150 },
    );
  });

  it('leaves every dimension, and a neck that goes round the neck', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        const before = advise(request);
        for (const { code, change } of before.checks.flatMap(({ remedies = [] }) => remedies)) {
          const after = advise(changed(request, change));
          for (const [path, { value }] of everyDimension(before))
            // A neck that no longer needs its opening has none.
            if (value !== null && !path.endsWith('opening-length'))
              expect(mm(after, path), `${path} by ${code}`).not.toBeNaN();
          const round = request.body?.values['neck-base-girth']?.value ?? 0;
          const least = Math.min(mm(before, 'neck-opening'), round) - 1;
          if (!Number.isNaN(least)) expect(mm(after, 'neck-opening'), code).toBeGreaterThanOrEqual(least);
        }
      }),
      { numRuns: 150 },
    );
  });

  it('is offered only beside what fails, is poor or tight', () => {
    fc.assert(
      fc.property(fitRequest, (request) => {
        for (const { verdict, remedies } of advise(request).checks)
          if (remedies !== undefined) expect(['fails', 'poor', 'tight']).toContain(verdict);
      }),
      { numRuns: 60 },
    );
  });
});

/** A neck of 283 round that a head of 561 does not pass, even stretched by half, and that is not to open. */
const CLOSED = {
  neckWidthMm: 120,
  frontNeckDepthMm: 40,
  backNeckDepthMm: 10,
  opening: { at: 'none', lengthMm: null },
} as const;

describe('the change', () => {
  it('leaves little doubt where a change of its kind can', () => {
    const design = CLOSED;
    const failing = check(adviceOn({ design }), 'head-through-neck');
    expect(failing.verdict).toBe('fails');
    for (const { change } of failing.remedies!)
      expect(check(advise(changed(requestOf({ design }), change)), 'head-through-neck').verdict).toBe('fine');
  });

  it('for a head: a neck that opens, a deeper or a wider one', () => {
    const found = remedies({ design: CLOSED }, 'head-through-neck');
    expect(found.map(({ change }) => Object.keys(change))).toEqual([
      ['opening'],
      ['frontNeckDepthMm'],
      ['neckWidthMm'],
    ]);
    expect(found[0]).toEqual({
      code: 'open-neck',
      params: { at: 'shoulder', beside: 'armhole' },
      change: { opening: 'shoulder' },
    });
  });

  it('for a head through a neck that is knitted already: none that would knit it again', () => {
    const differs = { made: [made('back/neck-width', 150)], body: womanWith({ 'head-girth': 700 }) };
    const changes = remedies(differs, 'head-through-neck').flatMap(({ change }) => Object.keys(change));
    expect(changes).not.toContain('neckWidthMm');
  });

  /** E = −75: F 865, I 853, which stretches by 15 % to 981 of 940 + (1180 − 940)/4 = 1000. */
  it('for the shoulders: more ease, as far as the fit stays close', () => {
    const fabric = fabricOf(3, { stretch: { across: 0.3, along: 0 } });
    const body = womanWith({ 'shoulder-girth': 1180 });
    const [remedy] = remedies({ body, fabric, design: { ease: { mm: -75 }, length: 'cropped' } }, 'over-the-shoulders');
    // 1000/1.15 = 869.6 of inner girth: 940 + E − 12 ≥ 869.6 asks E ≥ −58.4.
    // With little doubt: 1.645 × the making's 10 and more asks 17 above that, E ≥ −43.6: −40.
    expect(remedy).toEqual({ code: 'more-ease', params: { byMm: expect.closeTo(35, 9) }, change: { easeMm: -40 } });
  });

  /** 2 × 475 − 12 = 938, and 20 for a fabric that gives nothing, against 940 + (1180 − 940)/4 = 1000. */
  it('for the shoulders, where a garment gives the width: wider round than that', () => {
    const garment = garmentOf({ 'chest-width': 475 });
    const fabric = fabricOf(3, { stretch: { across: 0, along: 0 } });
    const design = { basis: 'both', length: 'cropped', ease: { as: 'garment', changeMm: 20 } } as const;
    const body = womanWith({ 'shoulder-girth': 1180 });
    const [remedy] = remedies({ body, garment, fabric, design }, 'over-the-shoulders');
    // 42 − 20 that it has: 25 in steps of 5 to hold; with little doubt 40 or so.
    expect(remedy!.code).toBe('wider-round');
    expect(Object.keys(remedy!.change)).toEqual(['easeChangeMm']);
    expect(
      check(advise(changed(requestOf({ body, garment, fabric, design }), remedy!.change)), 'over-the-shoulders')
        .verdict,
    ).toBe('fine');
  });

  /** A boat neck takes all that the shoulders leave: any wider, and it would not stay on them; any deeper, and it would be no boat. */
  it('for a head: no wider neck than the shoulders carry, and no boat that is none', () => {
    const fabric = fabricOf(3, { ribStretch: 0 });
    const design = { neckline: 'boat', opening: { at: 'none', lengthMm: null } } as const;
    const differs = { fabric, design, body: womanWith({ 'across-back': 240 }) };
    expect(check(adviceOn(differs), 'head-through-neck').verdict).toBe('fails');
    expect(check(adviceOn(differs), 'head-through-neck').params).toMatchObject({ cures: ['another-neckline'] });
  });

  it('for a head: no neck deeper than the fullest part of the chest', () => {
    const design = { ...CLOSED, neckWidthMm: 90, backNeckDepthMm: 15, frontNeckDepthMm: 105 };
    const differs = { fabric: fabricOf(3, { ribStretch: 0 }), design };
    expect(remedies(differs, 'head-through-neck').map(({ change }) => Object.keys(change))).toEqual([
      ['opening'],
      ['neckWidthMm'],
    ]);
  });

  it('for shoulders beside a cardigan’s neck: none that makes it tight round the neck', () => {
    const baby = bodyOf({ ...BABY, 'across-back': 130 }, 'baby');
    const differs = { body: baby, design: { silhouette: 'cardigan', construction: 'set-in', bandMm: 25 } } as const;
    expect(check(adviceOn(differs), 'neck-on-shoulders')).toMatchObject({ verdict: 'fails' });
    expect(remedies(differs, 'neck-on-shoulders').filter(({ change }) => 'neckWidthMm' in change)).toEqual([]);
  });

  it('for a piece that is finished: none, whatever was told of it', () => {
    const stiff = fabricOf(3, { stretch: { across: 0, along: 0 } });
    const body = womanWith({ 'hip-girth': 1100, 'hand-girth': 240 });
    const design = { ease: { mm: 20 }, hem: 'tapered' } as const;
    for (const path of ['back/neck-width', 'back/body-to-underarm', 'back/armhole-depth'])
      expect(remedies({ body, design, fabric: stiff, made: [made(path, 240)] }, 'hip'), path).toEqual([]);
    const own = { cuffWidthMm: 85 };
    const sleeve = [made('sleeve/sleeve-length', 490)];
    expect(remedies({ body, design: own, made: sleeve }, 'hand-through-cuff')).toEqual([]);
    expect(remedies({ body, design: own }, 'hand-through-cuff')).not.toEqual([]);
  });

  /** 2 × 85 − 12 = 158 of 212.8: 27.4 of width to hold; 218 with u = √(1.12² + 2.18²) = 2.45 is sure: 30 in steps of 2.5. */
  it('for a maker’s own cuff: a wider one, for any other none, which passes the hand by its rule', () => {
    const fabric = fabricOf(3, { ribStretch: 0, thicknessU: 0 });
    expect(remedies({ fabric, design: { cuffWidthMm: 85 } }, 'hand-through-cuff')).toEqual([
      { code: 'wider-cuff', params: { byMm: 30 }, change: { cuffWidthMm: 115 } },
    ]);
    expect(check(adviceOn({ fabric }), 'hand-through-cuff').verdict).toBe('fine');
  });

  /** 2 × 115 − 12 = 218 above a hand whose root holds 1.08 × 190 = 205.2: 6.4 of width less. */
  it('for a maker’s own cuff that slips over the hand: a closer one', () => {
    const design = { cuffWidthMm: 115 };
    const [remedy] = remedies({ design }, 'cuff-stays');
    expect(remedy!.code).toBe('closer-cuff');
    const after = advise(changed(requestOf({ design }), remedy!.change));
    expect(check(after, 'cuff-stays').verdict).toBe('fine');
    expect(check(after, 'hand-through-cuff').verdict).toBe('fine');
  });

  /** A waist of 437: from 537 on it would reach a hip of 1180, and a straight hem would widen the whole body for it. */
  it('for a body too short: none so long that it reaches the hip', () => {
    const body = womanWith({ 'hip-girth': 1180 });
    const above = (customLengthMm: number): Differs => ({
      body,
      design: { length: 'custom', customLengthMm, ribMm: 0.55 * customLengthMm, ease: { mm: -20 }, silhouette: 'vest' },
    });
    for (const [length, offered] of [
      [530, 0],
      [480, 1],
    ] as const) {
      expect(check(adviceOn(above(length)), 'body-below-underarm').verdict).toBe('fails');
      const found = remedies(above(length), 'body-below-underarm').filter(({ code }) => code === 'longer-body');
      expect(found).toHaveLength(offered);
      for (const { change } of found)
        expect(check(advise(changed(requestOf(above(length)), change)), 'hip').verdict).toBe('n/a');
    }
  });

  /** Two panels of 500 and a straight hem: 1000 − 3π of 1100. */
  it('for a body already made: none that would work it again', () => {
    const differs = { body: womanWith({ 'hip-girth': 1100 }), made: [made('back/width', 500)] };
    expect(check(adviceOn(differs), 'hip').verdict).toBe('fails');
    expect(remedies(differs, 'hip')).toEqual([]);
  });

  it('for a short body: its length, or less of it in rib', () => {
    const design = { length: 'custom', customLengthMm: 262, ribMm: 50 } as const;
    // 262 + 20.6 − 224.5 = 58.1 of 70: 20 more in steps of 10, or 15 less in steps of 5.
    expect(remedies({ design }, 'body-below-underarm')).toEqual([
      { code: 'longer-body', params: { byMm: 20 }, change: { length: 'custom', customLengthMm: 282 } },
      { code: 'shallower-rib', params: { byMm: 15 }, change: { ribMm: 35 } },
    ]);
  });
});
