import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Chain, NOWHERE } from './chain.ts';
import { INPUT_COUNT, unknownRow } from './slots.ts';
import { Steps } from './steps.ts';

const INPUTS = 3;
/** Places of numbers that are worked out, one after the other. */
const worked = (at: number): number => INPUT_COUNT + at;
/** An input, or one of those before. */
const before = (at: number) => fc.nat(INPUTS + at - 1).map((pick) => (pick < INPUTS ? pick : worked(pick - INPUTS)));
const times = fc.constantFrom(-2, -0.5, 0.3, 1, 4);

/** A step for each number: a sum, a product, the smaller of two, or the square root of a sum of squares. */
const someSteps = fc.tuple(
  ...Array.from({ length: 8 }, (_, at) =>
    fc.record({
      kind: fc.constantFrom('sum', 'sum', 'product', 'smaller', 'solved'),
      a: before(at),
      b: before(at),
      times,
    }),
  ),
);
type SomeStep = { kind: string; a: number; b: number; times: number };

function stepsOf(all: readonly SomeStep[]): Steps {
  const steps = new Steps();
  all.forEach(({ kind, a, b, times }, at) => {
    const slot = worked(at);
    if (kind === 'sum') steps.sum(slot, [times, a], [1, b]);
    else if (kind === 'product') steps.product(slot, a, b);
    else if (kind === 'smaller') steps.smaller(slot, a, b);
    else steps.solved(slot, (x, y) => Math.hypot(x, y), a, b);
  });
  return steps;
}

/** How the last number moves with a number: that through each source added up, from the last step back. */
function byHand(steps: Steps, partials: readonly number[], with_: number): number {
  const moves = (slot: number): number => {
    if (slot === with_) return 1;
    if (slot < INPUT_COUNT) return 0;
    const step = slot - INPUT_COUNT;
    return steps
      .sourcesOf(step)
      .reduce((sum, source, at) => sum + partials[steps.startOf(step) + at]! * moves(source), 0);
  };
  return moves(worked(7));
}

describe('the chain rule through steps', () => {
  const values = fc.array(fc.double({ min: 0.5, max: 2, noNaN: true }), { minLength: INPUTS, maxLength: INPUTS });

  it('is what every way from a number to another adds up to', () => {
    fc.assert(
      fc.property(someSteps, values, fc.nat(6), (some, given, way) => {
        const steps = stepsOf(some);
        const inputs = unknownRow();
        given.forEach((value, slot) => (inputs[slot] = value));
        const partials = steps.partials(steps.workOut(inputs));
        const of = [0, 1, 2, worked(way)];
        const chain = new Chain(steps, of);
        const rates = chain.rates(partials);
        of.forEach((slot, column) => {
          const rate = rates[chain.place(worked(7), column)]!;
          const expected = byHand(steps, partials, slot);
          expect(Math.abs(rate - expected)).toBeLessThan(1e-9 * (1 + Math.abs(expected)));
        });
      }),
      { numRuns: 500 },
    );
  });

  it('has no place for a number that no way leads to', () => {
    const steps = new Steps();
    steps.sum(worked(0), [2, 0]);
    const chain = new Chain(steps, [0, 1]);
    expect(chain.place(worked(0), 1)).toBe(NOWHERE);
    expect(chain.place(worked(0), 0)).not.toBe(NOWHERE);
    expect(chain.rates(steps.partials(steps.workOut(unknownRow())))[NOWHERE]).toBe(0);
  });
});
