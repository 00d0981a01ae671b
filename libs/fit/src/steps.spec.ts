import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Chain } from './chain.ts';
import { S, unknownRow } from './slots.ts';
import { Steps } from './steps.ts';

/** A row in which some numbers are given. */
function given(values: Partial<Record<keyof typeof S, number>>) {
  const row = unknownRow();
  for (const [name, value] of Object.entries(values)) row[S[name as keyof typeof S]] = value;
  return row;
}

/** How the number in place `slot` moves with each of `of`. */
function rateOf(steps: Steps, inputs: number[], slot: number, ...of: number[]): number[] {
  const chain = new Chain(steps, of);
  const rates = chain.rates(steps.partials(steps.workOut(inputs)));
  return of.map((_, column) => rates[chain.place(slot, column)]!);
}

describe('a step', () => {
  const chestAndHip = given({ chest: 900, hip: 1000 });

  it('sums numbers, each so many times, and moves with each that often', () => {
    const steps = new Steps();
    steps.sum(S.ease, [2, S.chest], [-0.5, S.hip]);
    expect(steps.workOut(chestAndHip)[S.ease]).toBe(1300);
    expect(rateOf(steps, chestAndHip, S.ease, S.chest, S.hip)).toEqual([2, -0.5]);
  });

  it('leaves out what is taken no times, known or not', () => {
    const steps = new Steps();
    steps.sum(S.ease, [1, S.chest], [0, S.head]);
    expect(steps.workOut(chestAndHip)[S.ease]).toBe(900);
  });

  it('multiplies, and moves with each as often as the other says', () => {
    const steps = new Steps();
    steps.product(S.ease, S.chest, S.hip);
    expect(steps.workOut(chestAndHip)[S.ease]).toBe(900_000);
    expect(rateOf(steps, chestAndHip, S.ease, S.chest, S.hip)).toEqual([1000, 900]);
  });

  it.each([
    ['smaller', [1, 0], 900, NaN],
    ['larger', [0, 1], 1000, NaN],
    ['atMost', [1, 0], 900, 900],
    ['atLeast', [0, 1], 1000, 900],
  ] as const)('keeps to one of two, and moves with that one: %s', (kind, rates, value, withoutHip) => {
    const steps = new Steps();
    steps[kind](S.ease, S.chest, S.hip);
    expect(steps.workOut(chestAndHip)[S.ease]).toBe(value);
    expect(rateOf(steps, chestAndHip, S.ease, S.chest, S.hip)).toEqual(rates);
    expect(steps.workOut(given({ chest: 900 }))[S.ease]).toBe(withoutHip);
  });

  it.each(['smaller', 'larger', 'atMost', 'atLeast'] as const)('of two equals takes the first: %s', (kind) => {
    const steps = new Steps();
    steps[kind](S.ease, S.chest, S.hip);
    expect(rateOf(steps, given({ chest: 900, hip: 900 }), S.ease, S.chest, S.hip)).toEqual([1, 0]);
  });

  it.each([
    [-10, -2, 0.2],
    [10, 3.5, 0.35],
    [0, 0, 0.35],
  ])('bends at nothing: %s becomes %s', (chosenEase, value, rate) => {
    const steps = new Steps();
    steps.bent(S.ease, S.chosenEase, 0.2, 0.35);
    expect(steps.workOut(given({ chosenEase }))[S.ease]).toBe(value);
    expect(rateOf(steps, given({ chosenEase }), S.ease, S.chosenEase)).toEqual([rate]);
  });

  /** √(3² + 4²) = 5, with slopes 3/5 and 4/5. */
  it('solves, and moves by central differences', () => {
    const steps = new Steps();
    steps.solved(S.ease, (a, b) => Math.sqrt(a * a + b * b), S.chest, S.hip);
    const inputs = given({ chest: 300, hip: 400 });
    expect(steps.workOut(inputs)[S.ease]).toBe(500);
    const [byChest, byHip] = rateOf(steps, inputs, S.ease, S.chest, S.hip);
    expect(byChest).toBeCloseTo(0.6, 9);
    expect(byHip).toBeCloseTo(0.8, 9);
  });

  it('moves to one side where nothing is solved on the other', () => {
    const steps = new Steps();
    steps.solved(S.ease, (a) => (a < 300 ? NaN : 2 * a), S.chest);
    expect(rateOf(steps, given({ chest: 300 }), S.ease, S.chest)).toEqual([2]);
  });

  it('of nothing is always the same', () => {
    const steps = new Steps();
    steps.always(S.ease, 7);
    expect(steps.workOut(chestAndHip)[S.ease]).toBe(7);
  });
});

describe('steps one after the other', () => {
  /** ease = chest + 2 hip; mid = ease²; panel = mid + chest. */
  const steps = new Steps();
  steps.sum(S.ease, [1, S.chest], [2, S.hip]);
  steps.product(S.mid, S.ease, S.ease);
  steps.sum(S.panel, [1, S.mid], [1, S.chest]);
  steps.same(S.cuff, S.wrist);
  const near = fc.double({ min: 1, max: 100, noNaN: true });

  it('move with an input by every way it takes: the chain rule', () => {
    fc.assert(
      fc.property(near, near, (chest, hip) => {
        const [byChest, byHip] = rateOf(steps, given({ chest, hip }), S.panel, S.chest, S.hip);
        expect(byChest).toBeCloseTo(2 * (chest + 2 * hip) + 1, 6);
        expect(byHip).toBeCloseTo(4 * (chest + 2 * hip), 6);
      }),
    );
  });

  it('take a number on the way to move by itself', () => {
    expect(rateOf(steps, given({ chest: 1, hip: 2 }), S.panel, S.ease)).toEqual([10]);
    expect(rateOf(steps, given({ chest: 1, hip: 2 }), S.ease, S.ease, S.mid)).toEqual([1, 0]);
  });

  it('are worked out again, those that are named and no others', () => {
    const row = steps.workOut(given({ chest: 1, hip: 2, wrist: 5 }));
    row[S.ease] = 6;
    row[S.wrist] = 9;
    steps.workOutAgain(row, [1, 2]);
    expect([row[S.mid], row[S.panel], row[S.cuff]]).toEqual([36, 37, 5]);
  });

  it('do not mind what is not known where it is of no account', () => {
    const kept = new Steps();
    kept.sum(S.ease, [1, S.head], [1, S.chest]);
    kept.atMost(S.mid, S.chest, S.ease);
    expect(rateOf(kept, given({ chest: 900 }), S.mid, S.chest)).toEqual([1]);
  });
});
