import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minus, plus, product, propagateCovariance, times, unknown, type Quantity } from '#measure';
import { graph, graphInputs } from '../../../../tests/support/random-graph.ts';
import { Evaluation, type InputUncertainty } from './evaluation.ts';
import { gradient } from './gradient.ts';
import { Layout } from './layout.ts';

const A = unknown();
const B = unknown();
const C = unknown();
const SURE: InputUncertainty = { u: [0, 0, 0], row: [-1, -1, -1], covariance: [] };

/** Some quantities of three inputs, evaluated; the first two may be rounded. */
function evaluate(outputs: readonly Quantity[], x: readonly number[], input: InputUncertainty = SURE): Evaluation {
  const rounded = outputs.slice(0, 2);
  const layout = new Layout({ inputs: [A, B, C], named: outputs, rounded, outputs, constraints: [] });
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
        const layout = new Layout({ inputs, named: outputs, rounded: [], outputs, constraints: [] });
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

it('a value that is not known is NaN', () => {
  const sum = plus(A, B);
  expect(evaluate([sum], [NaN, 1, 1]).value(sum)).toBeNaN();
});
