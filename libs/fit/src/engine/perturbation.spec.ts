import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plus, product, times, unknown, type Quantity } from '#measure';
import { graph, graphInputs } from '../../../../tests/support/random-graph.ts';
import { Layout } from './layout.ts';
import { Perturbation } from './perturbation.ts';

const A = unknown();
const B = unknown();
const SUM = plus(A, B);
const AREA = product(SUM, B);
const DOUBLE = times(2, SUM);
const LAYOUT = new Layout({
  inputs: [A, B],
  named: [SUM, AREA, DOUBLE],
  rounded: [],
  outputs: [],
  solved: [],
  sheet: [],
  constraints: [],
});

/** Moves a quantity on its way to another; a = 2, b = 5. */
function moved(of: Quantity, to: Quantity) {
  const values = LAYOUT.tape.evaluate([2, 5]);
  return {
    values,
    perturbation: new Perturbation(
      LAYOUT.tape,
      values,
      [{ place: LAYOUT.tape.place(of), rate: 1 }],
      LAYOUT.path(of, to),
    ),
  };
}

describe('a quantity that is moved', () => {
  it('takes with it what depends on it', () => {
    expect(moved(A, AREA).perturbation.by(3).value(AREA)).toBe(50);
  });

  it('is moved from where it was, not from where it is', () => {
    const { perturbation } = moved(A, AREA);
    perturbation.by(3);
    expect(perturbation.by(-1).value(AREA)).toBe(30);
    expect(perturbation.by(0).value(AREA)).toBe(35);
  });

  it('leaves alone what it is made from, and the other ways from there', () => {
    const { perturbation } = moved(SUM, AREA);
    perturbation.by(1);
    expect([A, B, SUM, AREA].map(perturbation.value)).toEqual([2, 5, 8, 40]);
  });

  it('leaves alone what is not on the way', () => {
    expect(moved(A, AREA).perturbation.by(3).value(DOUBLE)).toBe(14);
  });

  /** a = 2 and b = 5 by 3 and −2 · 3: (5 − 1)·(−1). */
  it('may be several, each at its rate', () => {
    const { tape } = LAYOUT;
    const moves = [
      { place: tape.place(A), rate: 1 },
      { place: tape.place(B), rate: -2 },
    ];
    const perturbation = new Perturbation(tape, tape.evaluate([2, 5]), moves, LAYOUT.path(B, AREA));
    expect([A, B, AREA].map(perturbation.by(3).value)).toEqual([5, -1, -4]);
  });

  it('leaves the values it began from as they were', () => {
    const { values, perturbation } = moved(A, AREA);
    perturbation.by(3);
    expect(values).toEqual(LAYOUT.tape.evaluate([2, 5]));
  });

  it('of any formula is that formula of a moved input', () => {
    const change = fc.integer({ min: -20, max: 20 });
    fc.assert(
      fc.property(graph, graphInputs, change, ({ inputs, nodes }, x, by) => {
        const { quantity, plain } = nodes.at(-1)!;
        const layout = new Layout({
          inputs,
          named: [quantity],
          rounded: [],
          outputs: [],
          solved: [],
          sheet: [],
          constraints: [],
        });
        const path = layout.path(inputs[0]!, quantity);
        const perturbation = new Perturbation(layout.tape, layout.tape.evaluate(x), [{ place: 0, rate: 1 }], path);
        expect(perturbation.by(by).value(quantity)).toBeCloseTo(plain([x[0]! + by, x[1]!, x[2]!]), 6);
      }),
    );
  });
});
