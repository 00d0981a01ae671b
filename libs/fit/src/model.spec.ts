import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plannedRequest } from '../../../tests/support/fit-requests.ts';
import { requestOf, womanWith } from '../../../tests/support/fit-samples.ts';
import { CHECK_RULES } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import type { FitRequest } from './fit-request.ts';
import { modelOf } from './model.ts';
import { Moved, Nudge } from './nudging.ts';
import { INPUT_COUNT, S, UNCERTAIN } from './slots.ts';
import { workOut } from './work-out.ts';

/** Small beside any measure, mm. */
const STEP = 2 ** -8;
const NAMES = Object.keys(S);

function settled(request: FitRequest) {
  const { inputs, decisions } = workOut(request);
  return { values: inputs.values, decisions };
}

/** Another choice than this one. */
function other(decided: unknown): unknown {
  if (typeof decided === 'boolean') return !decided;
  if (typeof decided === 'number') return decided + 1;
  if (typeof decided === 'string') return `not ${decided}`;
  return Object.fromEntries(
    Object.entries(decided as object).map(([name, value]) => [name, typeof value === 'boolean' ? !value : value]),
  );
}

describe('the model', () => {
  it('moves a number on the way, and all that comes after it', () => {
    const { values, decisions } = settled(requestOf());
    const model = modelOf(decisions);
    const plain = model.steps.workOut(values);
    const every = Array.from({ length: model.steps.length }, (_, step) => step);
    const after = every.slice(every.findIndex((step) => model.steps.slotOf(step) === S.mid) + 1);
    const wider = new Nudge(model.steps, plain, S.mid, after, plain.slice()).by(10);
    expect(wider[S.panel]! - plain[S.panel]!).toBeCloseTo(5, 9);
    expect(wider[S.sleeve]! - plain[S.sleeve]!).toBeCloseTo(-2.5, 9);
    expect(wider[S.chestFlat]).toBe(plain[S.chestFlat]);
    expect(values[S.chest]).toBe(940);
  });

  it('is laid out once for each set of decisions, whatever the size, and anew for any other', () => {
    const { decisions } = settled(requestOf());
    const model = modelOf(decisions);
    expect(modelOf({ ...decisions, kappa: 0.6, sized: { ...decisions.sized }, tape: 'in' })).toBe(model);
    for (const name of Object.keys(decisions) as (keyof Decisions)[]) {
      if (['kappa', 'sized', 'tape', 'figure', 'length'].includes(name)) continue;
      expect(modelOf({ ...decisions, [name]: other(decisions[name]) }), name).not.toBe(model);
    }
    expect(modelOf({ ...decisions, length: 'cropped' })).toBe(model);
    expect(modelOf({ ...decisions, length: 'custom' })).not.toBe(model);
    for (const name of ['taken', 'made'] as const)
      for (const flag of Object.keys(decisions[name]))
        expect(modelOf({ ...decisions, [name]: { ...decisions[name], [flag]: true } }), flag).not.toBe(model);
  });

  it('knows what hangs on a number, and which checks that draw it in move in proportion', () => {
    const { straight, bent, toBent, to } = modelOf(settled(requestOf()).decisions).hanging(S.mid);
    const rule = (name: string) => CHECK_RULES.find(({ check }) => check === name)!;
    expect(to(rule('over-the-shoulders')).length).toBeGreaterThan(0);
    expect(to(rule('front-and-back'))).toEqual([]);
    expect(straight.map(({ check }) => check)).toEqual(['hip', 'sleeve-below-underarm']);
    expect(bent.map(({ check }) => check)).toContain('over-the-shoulders');
    expect(bent.map(({ check }) => check)).not.toContain('sleeve-taper');
    expect(to(rule('over-the-shoulders')).every((step) => toBent.includes(step))).toBe(true);
  });

  it('counts every input that may be uncertain as one', () => {
    fc.assert(
      fc.property(plannedRequest, (request) => {
        for (const { slot, u, term } of workOut(request).inputs.told)
          if (u !== 0) expect(UNCERTAIN.has(slot), term.code).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('makes nothing of what is not known', () => {
    const { values, decisions } = settled(requestOf({ body: womanWith({ 'nape-to-cuff': undefined }) }));
    const v = modelOf(decisions).steps.workOut(values);
    expect([v[S.sleeve], v[S.underarmSeam], v[S.napeToCuff]]).toEqual([NaN, NaN, NaN]);
    expect(v[S.chestWidth]).toBe(507.5);
  });

  /** Every input is a length, so everything twice as large makes a garment twice as large; the set-in's 80 mm of curve is a rule apart. */
  it('is without a scale of its own: lengths twice as large make dimensions twice as large', () => {
    const shaped = plannedRequest.filter(({ design }) => design.construction !== 'set-in');
    fc.assert(
      fc.property(shaped, (request) => {
        const { values, decisions } = settled(request);
        const once = modelOf(decisions).steps.workOut(values);
        const twice = modelOf(decisions).steps.workOut(values.map((x) => 2 * x));
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
        const { steps, chain } = model;
        const { slot } = inputs.told[pick % inputs.told.length]!;
        const v = steps.workOut(inputs.values);
        const moves = new Moved(model.columnOf(slot), chain.rates(steps.partials(v)));
        const moved = (by: number) => steps.workOut(inputs.values.map((x, at) => (at === slot ? x + by : x)));
        const [up, down] = [moved(STEP), moved(-STEP)];
        for (let at = INPUT_COUNT; at < v.length; at++) {
          const [right, left] = [(up[at]! - v[at]!) / STEP, (v[at]! - down[at]!) / STEP];
          if (Number.isNaN(v[at]!) || Number.isNaN(right - left)) continue;
          const rate = moves.slope(at);
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
