import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plannedRequest } from '../../../tests/support/fit-requests.ts';
import { requestOf, womanWith } from '../../../tests/support/fit-samples.ts';
import type { FitRequest } from './fit-request.ts';
import { modelOf } from './model.ts';
import { Nudge } from './nudging.ts';
import { INPUT_COUNT, S } from './slots.ts';
import { workOut } from './work-out.ts';

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
});
