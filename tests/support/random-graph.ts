/**
 * Random formulas for tests of what evaluates and differentiates them: every quantity with plain arithmetic that makes the same of
 * the inputs. Numbers stay below some 10⁶, and a kink is met only where both sides of it have the same slope.
 */
import fc, { type Arbitrary } from 'fast-check';
import {
  abs,
  constant,
  hypot,
  max,
  min,
  minus,
  plus,
  positive,
  product,
  quotient,
  root,
  times,
  unknown,
  type Quantity,
} from '#measure';

interface GraphNode {
  readonly quantity: Quantity;
  readonly plain: (x: readonly number[]) => number;
}

interface Graph {
  readonly inputs: readonly Quantity[];
  /** In the order in which they were made; the last may depend on any. */
  readonly nodes: readonly GraphNode[];
}

type Make = (a: Quantity, b: Quantity) => Quantity;
type Plain = (a: number, b: number) => number;

/** `ab/(|a| + |b| + 1)` does not grow. `2x + √(x² + a²) = b` has the root `x = (2b − √(b² + 3a²))/3`. */
const STEPS: readonly (readonly [Make, Plain])[] = [
  [plus, (a, b) => a + b],
  [(a, b) => minus(a, b), (a, b) => a - b],
  [(a, b) => plus(times(0.5, a), times(-1.5, b), constant(3)), (a, b) => 0.5 * a - 1.5 * b + 3],
  [min, Math.min],
  [max, Math.max],
  [hypot, Math.hypot],
  [(a) => abs(a), (a) => Math.abs(a)],
  [(a) => positive(a), (a) => Math.max(a, 0)],
  [
    (a, b) => quotient(product(a, b), plus(abs(a), abs(b), constant(1))),
    (a, b) => (a * b) / (Math.abs(a) + Math.abs(b) + 1),
  ],
  [
    (a, b) => root(-1e7, 1e7, (x) => minus(plus(times(2, x), hypot(x, a)), b)),
    (a, b) => (2 * b - Math.sqrt(b * b + 3 * a * a)) / 3,
  ],
];

const INPUTS = 3;

export const graph: Arbitrary<Graph> = fc
  .array(fc.record({ step: fc.constantFrom(...STEPS), a: fc.nat(99), b: fc.nat(99) }), { minLength: 1, maxLength: 12 })
  .map((steps) => {
    const inputs = Array.from({ length: INPUTS }, unknown);
    const nodes: GraphNode[] = inputs.map((quantity, i) => ({ quantity, plain: (x) => x[i]! }));
    for (const {
      step: [make, plain],
      a: first,
      b: second,
    } of steps) {
      const a = nodes[first % nodes.length]!;
      const b = nodes[second % nodes.length]!;
      nodes.push({ quantity: make(a.quantity, b.quantity), plain: (x) => plain(a.plain(x), b.plain(x)) });
    }
    return { inputs, nodes };
  });

/** Inputs between −50 and 50 that no plain combination makes equal. */
export const graphInputs: Arbitrary<readonly number[]> = fc
  .tuple(...Array.from({ length: INPUTS }, () => fc.integer({ min: -50, max: 49 })))
  .map((whole) => whole.map((each, i) => each + [Math.SQRT1_2, Math.PI - 3, Math.E - 2][i]!));
