import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plannedRequest } from '../../../tests/support/fit-requests.ts';
import { requestOf, womanWith } from '../../../tests/support/fit-samples.ts';
import { decide } from './decide.ts';
import type { FitRequest } from './fit-request.ts';
import { inputsOf } from './inputs.ts';
import { readMade } from './made.ts';
import { Model } from './model.ts';
import { kappaOf } from './scale.ts';
import { INPUT_COUNT, Row, S } from './slots.ts';

function modelOf(request: FitRequest) {
  const kappa = kappaOf(request.body, request.rules);
  const made = readMade(request.made, request.design, 30, 30);
  const inputs = inputsOf(request, kappa, made.inputs);
  const decisions = decide(request, inputs, kappa, made);
  return { values: inputs.values, decisions };
}

describe('the model', () => {
  it('is the same each time, in a row that was used before', () => {
    const { values, decisions } = modelOf(requestOf());
    const model = new Model(values, decisions);
    const row = new Row();
    const first = model.workOut(row).slice();
    model.workOut(row, S.chest, 50);
    expect(model.workOut(row).slice()).toEqual(first);
  });

  it('moves an input, or a number on the way, and all that comes after it', () => {
    const { values, decisions } = modelOf(requestOf());
    const model = new Model(values, decisions);
    const plain = model.workOut(new Row());
    const wider = model.workOut(new Row(), S.mid, 10);
    expect(wider[S.panel]! - plain[S.panel]!).toBeCloseTo(5, 9);
    expect(wider[S.sleeve]! - plain[S.sleeve]!).toBeCloseTo(-2.5, 9);
    expect(wider[S.chestFlat]).toBe(plain[S.chestFlat]);
    expect(values[S.chest]).toBe(940);
  });

  it('makes nothing of what is not known', () => {
    const { values, decisions } = modelOf(requestOf({ body: womanWith({ 'nape-to-cuff': undefined }) }));
    const v = new Model(values, decisions).workOut(new Row());
    expect([v[S.sleeve], v[S.underarmSeam], v[S.napeToCuff]]).toEqual([NaN, NaN, NaN]);
    expect(v[S.chestWidth]).toBe(507.5);
  });

  /** Every input is a length, so everything twice as large makes a garment twice as large; the set-in's 80 mm of curve is a rule apart. */
  it('is without a scale of its own: lengths twice as large make dimensions twice as large', () => {
    const shaped = plannedRequest.filter(({ design }) => design.construction !== 'set-in');
    fc.assert(
      fc.property(shaped, (request) => {
        const { values, decisions } = modelOf(request);
        const once = new Model(values, decisions).workOut(new Row());
        const twice = new Model(
          values.map((x) => 2 * x),
          decisions,
        ).workOut(new Row());
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
