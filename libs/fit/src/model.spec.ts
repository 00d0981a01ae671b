import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plannedRequest } from '../../../tests/support/fit-requests.ts';
import { requestOf, womanWith } from '../../../tests/support/fit-samples.ts';
import type { FitRequest } from './fit-request.ts';
import { modelOf } from './model.ts';
import { Nudge } from './nudging.ts';
import { INPUT_COUNT, S } from './slots.ts';
import { workOut } from './work-out.ts';

/** Small beside any measure, mm. */
const STEP = 2 ** -8;
const NAMES = Object.keys(S);

function settled(request: FitRequest) {
  const { inputs, decisions } = workOut(request);
  return { values: inputs.values, decisions };
}

describe('the model', () => {
  it('moves a number on the way, and all that comes after it', () => {
    const { values, decisions } = settled(requestOf());
    const model = modelOf(decisions);
    const plain = model.workOut(values);
    const wider = new Nudge(model, plain, S.mid).by(10);
    expect(wider[S.panel]! - plain[S.panel]!).toBeCloseTo(5, 9);
    expect(wider[S.sleeve]! - plain[S.sleeve]!).toBeCloseTo(-2.5, 9);
    expect(wider[S.chestFlat]).toBe(plain[S.chestFlat]);
    expect(values[S.chest]).toBe(940);
  });

  it('makes nothing of what is not known', () => {
    const { values, decisions } = settled(requestOf({ body: womanWith({ 'nape-to-cuff': undefined }) }));
    const v = modelOf(decisions).workOut(values);
    expect([v[S.sleeve], v[S.underarmSeam], v[S.napeToCuff]]).toEqual([NaN, NaN, NaN]);
    expect(v[S.chestWidth]).toBe(507.5);
  });

  /** Every input is a length, so everything twice as large makes a garment twice as large; the set-in's 80 mm of curve is a rule apart. */
  it('is without a scale of its own: lengths twice as large make dimensions twice as large', () => {
    const shaped = plannedRequest.filter(({ design }) => design.construction !== 'set-in');
    fc.assert(
      fc.property(shaped, (request) => {
        const { values, decisions } = settled(request);
        const once = modelOf(decisions).workOut(values);
        const twice = modelOf(decisions).workOut(values.map((x) => 2 * x));
        for (let slot = INPUT_COUNT; slot < S.headNeed; slot++) {
          if (slot === S.neckScale) continue;
          const [expected, got] = [2 * once[slot]!, twice[slot]!];
          expect(Number.isNaN(got), String(slot)).toBe(Number.isNaN(expected));
          if (!Number.isNaN(expected))
            expect(Math.abs(got - expected), String(slot)).toBeLessThan(1e-6 * (1 + Math.abs(expected)));
        }
      }),
      { numRuns: 60 },
    );
  });

  /** The two ways of the same question: the chain rule through the steps, and the whole model with one input moved a little. */
  it('moves with each input as working it all out again says', () => {
    fc.assert(
      fc.property(plannedRequest, fc.nat(), (request, pick) => {
        const { inputs, decisions } = workOut(request);
        const model = modelOf(decisions);
        const { slot } = inputs.described[pick % inputs.described.length]!;
        const v = model.workOut(inputs.values);
        const rates = model.rates([slot], model.partials(v));
        const moved = (by: number) => model.workOut(inputs.values.map((x, at) => (at === slot ? x + by : x)));
        const [up, down] = [moved(STEP), moved(-STEP)];
        for (let at = INPUT_COUNT; at < v.length; at++) {
          const [right, left] = [(up[at]! - v[at]!) / STEP, (v[at]! - down[at]!) / STEP];
          if (Number.isNaN(v[at]!) || Number.isNaN(right - left)) continue;
          const rate = rates[at]!;
          const near = 1e-3 * (1 + Math.abs(rate));
          // Where a limit sets in the two sides differ.
          expect(rate, `${NAMES[at]} with ${NAMES[slot]}`).toBeGreaterThan(Math.min(right, left) - near);
          expect(rate, `${NAMES[at]} with ${NAMES[slot]}`).toBeLessThan(Math.max(right, left) + near);
        }
      }),
      { numRuns: 300 },
    );
  });
});
