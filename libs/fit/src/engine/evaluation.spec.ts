import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minus, plus, product, propagateCovariance, times, unknown, type Quantity } from '#measure';
import { graph, graphInputs } from '../../../../tests/support/random-graph.ts';
import { Evaluation, type InputUncertainty } from './evaluation.ts';
import { gradient } from './gradient.ts';
import { Layout, type Model } from './layout.ts';

const A = unknown();
const B = unknown();
const C = unknown();
const SURE: InputUncertainty = { u: [0, 0, 0], row: [-1, -1, -1], covariance: [] };

const layoutOf = (model: Partial<Model>): Layout =>
  new Layout({
    inputs: [A, B, C],
    named: [],
    rounded: [],
    outputs: [],
    solved: [],
    sheet: [],
    constraints: [],
    ...model,
  });

/** Some quantities of three inputs, evaluated; the first two may be rounded. */
function evaluate(outputs: readonly Quantity[], x: readonly number[], input: InputUncertainty = SURE): Evaluation {
  const rounded = outputs.slice(0, 2);
  const layout = layoutOf({ named: outputs, rounded, outputs });
  return new Evaluation(layout, x, input);
}

describe('the uncertainty of a quantity', () => {
  /** y = 3a − 2b: u² = 9u_a² + 4u_b² (JCGM 100:2008, equation 10). */
  const difference = minus(times(3, A), times(2, B));

  it('of independent inputs adds up their squared shares', () => {
    const input = { u: [0.5, 2, 7], row: [-1, -1, -1], covariance: [] };
    expect(evaluate([difference], [1, 1, 1], input).uncertainty(difference)).toBeCloseTo(Math.hypot(1.5, 4), 12);
  });

  /** And 2·3·(−2)·u(a, b) for a correlation of 0.8 (equation 13): 2.25 + 16 − 12·0.8·0.5·2. */
  it('of correlated inputs counts their covariance too', () => {
    const covariance = [
      [4, 0.8],
      [0.8, 0.25],
    ];
    const input = { u: [0.5, 2, 0], row: [1, 0, -1], covariance };
    expect(evaluate([difference], [1, 1, 1], input).uncertainty(difference)).toBeCloseTo(
      Math.sqrt(2.25 + 16 - 12 * 0.8),
      12,
    );
  });

  /** y = ab: (u_y/y)² = (u_a/a)² + (u_b/b)², 5.1.6 of the same. */
  it('of a product adds up relative uncertainties', () => {
    const of = product(A, B);
    const input = { u: [0.2, 0.6, 0], row: [-1, -1, -1], covariance: [] };
    expect(evaluate([of], [10, 20, 0], input).uncertainty(of) / 200).toBeCloseTo(Math.hypot(0.02, 0.03), 12);
  });

  it('counts an input once, by whichever ways it enters', () => {
    const of = minus(plus(A, B), A);
    const input = { u: [5, 2, 0], row: [-1, -1, -1], covariance: [] };
    expect(evaluate([of], [1, 1, 1], input).uncertainty(of)).toBe(2);
  });

  it('leaves out the covariance of an input that is sure', () => {
    const covariance = [
      [4, 3],
      [3, 4],
    ];
    const input = { u: [0, 2, 0], row: [0, 1, -1], covariance };
    expect(evaluate([difference], [1, 1, 1], input).uncertainty(difference)).toBe(4);
  });

  it('of any formula is what its gradient and the covariance of all inputs give', () => {
    const factor = fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 9, maxLength: 9 });
    fc.assert(
      fc.property(graph, graphInputs, factor, ({ inputs, nodes }, x, f) => {
        const outputs = nodes.map(({ quantity }) => quantity);
        const layout = layoutOf({ inputs, named: outputs, outputs });
        const row = (i: number): readonly number[] => f.slice(3 * i, 3 * i + 3);
        const covariance = [0, 1, 2].map((i) =>
          [0, 1, 2].map((j) => row(i).reduce((sum, each, k) => sum + each * row(j)[k]!, 0)),
        );
        const u = covariance.map((each, i) => Math.sqrt(each[i]!));
        const evaluation = new Evaluation(layout, x, { u, row: [0, 1, 2], covariance });
        const last = outputs.at(-1)!;
        const place = layout.tape.place(last);
        const coefficients = gradient(layout.tape, layout.tape.evaluate(x), place);
        expect(evaluation.uncertainty(last) ** 2).toBeCloseTo(propagateCovariance(coefficients, covariance) ** 2, 3);
      }),
    );
  });
});

describe('a derivative', () => {
  /** Sum and product of a = 2 and b = 5. */
  const sum = plus(A, B);
  const area = product(sum, B);
  const twice = times(2, area);

  it('by an input, a rounded quantity, or any other, is one of the same chain rule', () => {
    const evaluation = evaluate([sum, area, twice], [2, 5, 0]);
    expect(evaluation.derivative(twice, B)).toBe(24);
    expect(evaluation.derivative(twice, sum)).toBe(10);
    expect(evaluation.derivative(twice, twice)).toBe(1);
    expect(evaluation.derivative(twice, C)).toBe(0);
    expect(evaluation.derivative(sum, twice)).toBe(0);
  });

  it('that is no more than rounding is none', () => {
    const of = plus(A, times(1e-9, B));
    expect(evaluate([of], [1, 1, 1]).derivative(of, B)).toBe(0);
  });

  it('by an input is had from the dependencies too', () => {
    const evaluation = evaluate([sum, area], [2, 5, 0]);
    const dependencies = evaluation.dependencies(area).map((each) => [each.input, evaluation.byInput(each)]);
    expect(dependencies).toEqual([
      [0, 5],
      [1, 12],
    ]);
  });
});

describe('the followers of a quantity', () => {
  it('are the outputs that move with it, itself among them, those not known left out', () => {
    const half = times(0.5, A);
    const lost = plus(A, C);
    const other = times(3, B);
    expect(evaluate([half, other, lost], [4, 1, NaN]).followers(A)).toEqual([{ output: 0, rate: 0.5 }]);
    expect(evaluate([half, other, lost], [4, 1, 2]).followers(A)).toEqual([
      { output: 0, rate: 0.5 },
      { output: 2, rate: 1 },
    ]);
    expect(evaluate([half, other, lost], [4, 1, 2]).followers(half)).toEqual([{ output: 0, rate: 1 }]);
  });

  it('do not count what only might move', () => {
    const still = product(A, B);
    expect(evaluate([still], [4, 0, 0]).followers(A)).toEqual([]);
  });
});

/** A width of the plan, w = a + b, and what is left of it: w − πc, c the fabric's. Once w is made it no longer moves with a and b. */
describe('what is worked out from a sheet that is made', () => {
  const width = plus(A, B);
  const inner = minus(width, times(Math.PI, C));
  const spare = minus(inner, A);
  const layout = layoutOf({ named: [inner, spare], sheet: [width] });
  const input = { u: [5, 2, 0.3], row: [-1, -1, -1], covariance: [] };
  const evaluation = new Evaluation(layout, [900, 75, 6], input);

  it('moves with an input by every way but those through the sheet', () => {
    expect([0, 1, 2].map((at) => evaluation.judgedDerivative(inner, at))).toEqual([0, 0, -Math.PI]);
    expect([0, 1, 2].map((at) => evaluation.judgedDerivative(spare, at))).toEqual([-1, 0, -Math.PI]);
    expect([A, B, C].map((each) => evaluation.derivative(inner, each))).toEqual([1, 1, -Math.PI]);
  });

  /** Of the plan √(5² + 2² + (0.3π)²); of the sheet 0.3π, and with the body that it is compared with √(5² + (0.3π)²). */
  it('is as uncertain as what is left of its inputs', () => {
    expect(evaluation.uncertainty(inner)).toBeCloseTo(Math.sqrt(29 + (0.3 * Math.PI) ** 2), 12);
    expect(evaluation.judgedUncertainty(inner)).toBeCloseTo(0.3 * Math.PI, 12);
    expect(evaluation.judgedUncertainty(spare)).toBeCloseTo(Math.hypot(5, 0.3 * Math.PI), 12);
    expect(evaluation.judgedUncertainty(width)).toBe(0);
  });

  it('counts the covariance of what is left alone', () => {
    const covariance = [
      [25, 1.2],
      [1.2, 0.09],
    ];
    const correlated = new Evaluation(layout, [900, 75, 6], { u: [5, 2, 0.3], row: [0, -1, 1], covariance });
    expect(correlated.judgedUncertainty(inner)).toBeCloseTo(0.3 * Math.PI, 12);
    expect(correlated.judgedUncertainty(spare)).toBeCloseTo(
      Math.sqrt(25 + (0.3 * Math.PI) ** 2 + 2 * Math.PI * 1.2),
      12,
    );
  });
});

/** A width with two numbers of the sheet that follow it by 1/2 and −1, and one that does not. */
describe('a number of the sheet that is rounded', () => {
  const width = plus(A);
  const half = times(0.5, width);
  const rest = minus(B, width);
  const other = plus(C);
  const area = product(half, rest);
  const numbers = [width, half, rest, other];
  const layout = layoutOf({ rounded: [width], outputs: numbers, sheet: numbers, constraints: [area] });
  const evaluation = new Evaluation(layout, [100, 300, 7], SURE);
  const round = (change: number) => evaluation.rounding(width, evaluation.constrained(width)).by(change);

  it('takes its followers with it, each by its rate', () => {
    expect(numbers.map(round(10).value)).toEqual([110, 55, 190, 7]);
  });

  it('has what depends on the sheet worked out again from the numbers as rounded', () => {
    expect(round(0).value(area)).toBe(50 * 200);
    expect(round(10).value(area)).toBe(55 * 190);
  });

  it('moves none that is not known', () => {
    const unknownB = new Evaluation(layout, [100, NaN, 7], SURE);
    const rounding = unknownB.rounding(width, unknownB.constrained(width)).by(10);
    expect(rounding.value(half)).toBe(55);
    expect(rounding.value(rest)).toBeNaN();
  });
});

it('a value that is not known is NaN', () => {
  const sum = plus(A, B);
  expect(evaluate([sum], [NaN, 1, 1]).value(sum)).toBeNaN();
});
