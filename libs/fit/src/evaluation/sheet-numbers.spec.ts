import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Quantity } from '#measure';
import { plannedRequest } from '../../../../tests/support/fit-requests.ts';
import {
  adviceOn,
  check,
  dimension,
  fabricOf,
  made,
  womanWith,
  type Differs,
} from '../../../../tests/support/fit-samples.ts';
import { compute, type Computed } from './compute.ts';
import { sheetNumbers } from './sheet-numbers.ts';

/** A fabric that was pulled and gives nothing: σ = 20 at the chest and at the hip, so the room is 1015 + 20 − 12 = 1023. */
const UNYIELDING = fabricOf(3, { stretch: { across: 0, along: 0 } });

/** The values of all quantities when some numbers of the sheet are changed, by their places, and all others of them stay. */
function withSheet({ model, numbers }: Computed, changes: ReadonlyMap<string, number>): (of: Quantity) => number {
  const { tape } = model.layout;
  const sheet = model.placed.filter(({ planned }) => !planned.derived);
  const held = new Set(sheet.map(({ planned }) => tape.place(planned.quantity)));
  const before = tape.evaluate(numbers.values);
  const values = before.slice();
  for (const { piece, planned } of sheet) {
    // One quantity may stand in several places.
    const place = tape.place(planned.quantity);
    values[place] = before[place]! + (changes.get(`${piece}/${planned.name}`) ?? 0);
  }
  const rest = Array.from({ length: tape.size }, (_, place) => place).filter(
    (place) => place >= tape.inputs && !held.has(place),
  );
  tape.evaluateAgain(values, rest);
  return (of) => values[tape.place(of)]!;
}

describe('a dimension rounded to its low or high', () => {
  /** It moves with what follows it, every other number of the sheet stays, and the checks are worked out again from them. */
  it('keeps every check that held', () => {
    fc.assert(
      fc.property(plannedRequest, (request) => {
        const computed = compute(request);
        const { model, evaluation, choices } = computed;
        const numbers = sheetNumbers(computed);
        const held = model.checks.flatMap(({ rule, traced }) => {
          if (traced === null || rule.comfort(choices) || !rule.applies(choices, evaluation.value(traced.need)))
            return [];
          return evaluation.value(traced.margin) >= 0 ? traced : [];
        });
        for (const { piece, planned } of model.placed) {
          const number = numbers.of(planned);
          if (number === null || planned.derived) continue;
          for (const to of [number.low, number.high]) {
            const changes = new Map(
              number.follows.map((each) => [`${each.piece}/${each.name}`, each.slope * (to - number.value)]),
            );
            const v = withSheet(computed, changes);
            for (const { rule, margin } of held)
              expect(v(margin), `${piece}/${planned.name} to ${to}: ${rule.check}`).toBeGreaterThan(-1e-4);
          }
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('the range of the plain request', () => {
  const range = (path: string, differs: Differs = {}) => {
    const { low, value, high } = dimension(adviceOn(differs), path);
    return [low! - value!, high! - value!].map((by) => expect.closeTo(by, 6));
  };

  /** From 50 to 100 of ease about 75: 25 of girth, 12.5 of width either way. */
  it('of the width: to the ends of the band', () => {
    expect([-12.5, 12.5]).toEqual(range('chest-width'));
    expect([-12.5, 12.5]).toEqual(range('back/width'));
  });

  /** Over the shoulders 940 + (1200 − 940)/4 = 1005 of 1023: 18 of girth down, 9 of width. */
  it('of the width: down as far as it still goes on', () => {
    const differs = { body: womanWith({ 'shoulder-girth': 1200 }), fabric: UNYIELDING };
    expect([-9, 12.5]).toEqual(range('chest-width', differs));
    expect([-9, 12.5]).toEqual(range('back/width', differs));
  });

  /** Of 224.5, 2A − 3π ≥ 400 leaves 19.8, and a scye of 430 half of 449 − 3π − 430; of A = 1.02 × 230 + 1.5π for one of 460, 0.02 × 230. */
  it('of an armhole: down to the arm', () => {
    expect([-10, 10]).toEqual(range('armhole-depth'));
    const of = (scye: number) => range('armhole-depth', { body: womanWith({ 'scye-girth': scye }) });
    expect([(3 * Math.PI - 19) / 2, 10]).toEqual(of(430));
    expect([-4.6, 10]).toEqual(of(460));
  });

  /** In either fabric ±10, whatever the ease: a sleeve's top has no band. */
  it('of a sleeve’s top: 10 either way', () => {
    for (const category of ['very-close', 'classic'] as const) {
      const fabric = fabricOf(3, { stretch: { across: 2, along: 2 } });
      const design = { construction: 'set-in', ease: { category, place: 0.5 } } as const;
      expect([-10, 10]).toEqual(range('sleeve/sleeve-top-width', { fabric, design }));
    }
  });

  /** 1.5 P ≥ 561 of a neck that was widened to 1.5 P = 1.02 × 600 for a head of 600: what the width takes off P stays within 8. */
  it('of a neck made larger for the head: down to where the head only just passes', () => {
    const body = womanWith({ 'head-girth': 600 });
    const advice = adviceOn({ body });
    const { low, value, high } = dimension(advice, 'front-neck-depth');
    expect(high! - value!).toBeCloseTo(10, 9);
    expect(value! - low!).toBeGreaterThan(4);
    expect(value! - low!).toBeLessThan(10);
    const own = {
      neckWidthMm: dimension(advice, 'neck-width').value,
      frontNeckDepthMm: low!,
      backNeckDepthMm: dimension(advice, 'back-neck-depth').value,
    };
    expect(check(adviceOn({ body, design: own }), 'head-through-neck').margin).toBeCloseTo(0, 5);
  });

  it('of a length: 10 either way', () => {
    expect([-10, 10]).toEqual(range('centre-back-length'));
    expect([-10, 10]).toEqual(range('sleeve-length'));
  });

  /** Opening 385.0 × 1.5 = 577.5 for a head of 561: 11 of the opening may go, less than 10 of the width does. */
  it('of a neck that passes easily: 10 either way', () => {
    expect([-10, 10]).toEqual(range('back-neck-depth'));
  });

  /** A narrow back carries so wide a neck and no wider; a narrower one it carries too, until the head does not pass. */
  it('of a neck kept at what the shoulders carry: down, and not up', () => {
    const body = womanWith({ 'across-back': 250 });
    const design = { construction: 'set-in', ease: { mm: 0 } } as const;
    const { checks } = adviceOn({ body, design });
    expect(checks.find(({ check }) => check === 'neck-on-shoulders')!.margin).toBeCloseTo(0, 9);
    const { low, value, high } = dimension(adviceOn({ body, design }), 'neck-width');
    expect(low! - value!).toBeLessThan(-4);
    expect(high! - value!).toBeCloseTo(0, 6);
  });

  it('of what is made: none', () => {
    const differs = { made: [made('back/width', 510)] };
    expect([0, 0]).toEqual(range('chest-width', differs));
    expect([0, 0]).toEqual(range('front/width', differs));
  });

  /** The hand of 212.8 leaves (253.875 − 212.8)/1.5 = 27. */
  it('of a cuff: 10 either way, for the hand leaves more', () => {
    expect([-10, 10]).toEqual(range('sleeve/cuff-width'));
  });

  /** A hand of 215 needs 240.8 of 253.875: 13.075/1.5 of girth may go. One of 226 has its cuff made for 1.02 × 253.12: 0.02 of it, /1.5. */
  it('of a cuff: down to a larger hand', () => {
    const of = (hand: number) => range('sleeve/cuff-width', { body: womanWith({ 'hand-girth': hand }) });
    expect([-13.075 / 1.5, 10]).toEqual(of(215));
    expect([(-0.02 * 253.12) / 1.5, 10]).toEqual(of(226));
  });
});

describe('a check that fails already', () => {
  /** Shoulders of 1300 need 1030 of 1023 in a fabric that gives nothing. */
  it('draws nothing in, and is told as a collision', () => {
    const body = womanWith({ 'shoulder-girth': 1300 });
    const advice = adviceOn({ body, fabric: UNYIELDING });
    const { low, value, high } = dimension(advice, 'back/width');
    expect([low! - value!, high! - value!]).toEqual([expect.closeTo(-12.5, 6), expect.closeTo(12.5, 6)]);
    expect(advice.collisions).toEqual([
      { piece: 'assembled', dimension: 'chest-width', wishes: ['goes-over-shoulders', 'close-ease'] },
    ]);
  });
});
