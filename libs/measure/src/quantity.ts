/**
 * Numbers in formulas. A formula over quantities computes nothing: it records itself as a graph of immutable nodes, each of
 * which knows how to compute its value from its sources and its exact partial derivatives. An engine evaluates the graph.
 * A value that is not known is NaN, and so is what follows from it, unless an operation says otherwise.
 */

/** A function of several numbers with its exact partial derivatives. */
export interface Operation {
  readonly value: (x: readonly number[]) => number;
  /** One partial derivative for each argument, at `x`, where the function is `y`. */
  readonly partials: (x: readonly number[], y: number) => readonly number[];
}

/** A number that is given. */
interface Input {
  readonly kind: 'input';
}

/** A sum of quantities, each taken so many times, and a plain number. */
export interface Sum {
  readonly kind: 'sum';
  readonly terms: readonly Term[];
  readonly constant: number;
}

interface Term {
  readonly times: number;
  readonly of: Quantity;
}

/** What an operation makes of other quantities. */
interface Applied {
  readonly kind: 'applied';
  readonly operation: Operation;
  readonly sources: readonly Quantity[];
}

/** The value of `unknown`, between `lower` and `upper`, for which the residual is zero. */
export interface Root {
  readonly kind: 'root';
  readonly unknown: Input;
  readonly residual: Quantity;
  readonly lower: number;
  readonly upper: number;
  /** Whether a residual that is nowhere zero gives the nearer end, and not NaN. */
  readonly clamped: boolean;
}

export type Quantity = Input | Sum | Applied | Root;

/** A number that will be given. */
export const unknown = (): Input => ({ kind: 'input' });

/** A number that depends on no other. */
export const constant = (value: number): Quantity => ({ kind: 'sum', terms: [], constant: value });

/** The sum. Of one quantity: a quantity of its own with the same value, which can be rounded without the other. */
export const plus = (...of: readonly Quantity[]): Quantity => sum(of.map((each) => ({ times: 1, of: each })));

/** The first less all the others. */
export const minus = (from: Quantity, ...less: readonly Quantity[]): Quantity =>
  sum([{ times: 1, of: from }, ...less.map((each) => ({ times: -1, of: each }))]);

/** So many times a quantity; no times is nothing, whether the quantity is known or not. */
export const times = (factor: number, of: Quantity): Quantity => sum(factor === 0 ? [] : [{ times: factor, of }]);

const sum = (terms: readonly Term[]): Sum => ({ kind: 'sum', terms, constant: 0 });

const apply = (operation: Operation, ...sources: readonly Quantity[]): Quantity => ({
  kind: 'applied',
  operation,
  sources,
});

const unary = (value: (a: number) => number, slope: (a: number, y: number) => number): Operation => ({
  value: (x) => value(x[0]!),
  partials: (x, y) => [slope(x[0]!, y)],
});

const binary = (
  value: (a: number, b: number) => number,
  partials: (a: number, b: number, y: number) => readonly number[],
): Operation => ({
  value: (x) => value(x[0]!, x[1]!),
  partials: (x, y) => partials(x[0]!, x[1]!, y),
});

const PRODUCT = binary(
  (a, b) => a * b,
  (a, b) => [b, a],
);
export const product = (a: Quantity, b: Quantity): Quantity => apply(PRODUCT, a, b);

const QUOTIENT = binary(
  (a, b) => (b === 0 ? NaN : a / b),
  (_, b, y) => [1 / b, -y / b],
);
/** NaN where the divisor is zero. */
export const quotient = (a: Quantity, b: Quantity): Quantity => apply(QUOTIENT, a, b);

const FIRST: readonly number[] = [1, 0];
const SECOND: readonly number[] = [0, 1];

const MIN = binary(Math.min, (a, b) => (b < a ? SECOND : FIRST));
/** The smaller of two; where they are equal it moves with the first. */
export const min = (a: Quantity, b: Quantity): Quantity => apply(MIN, a, b);

const MAX = binary(Math.max, (a, b) => (b > a ? SECOND : FIRST));
/** The larger of two; where they are equal it moves with the first. */
export const max = (a: Quantity, b: Quantity): Quantity => apply(MAX, a, b);

const AT_MOST = binary(
  (a, ceiling) => (ceiling < a ? ceiling : a),
  (a, ceiling) => (ceiling < a ? SECOND : FIRST),
);
/** Kept down to a ceiling. A ceiling that is not known limits nothing. */
export const atMost = (a: Quantity, ceiling: Quantity): Quantity => apply(AT_MOST, a, ceiling);

const AT_LEAST = binary(
  (a, floor) => (floor > a ? floor : a),
  (a, floor) => (floor > a ? SECOND : FIRST),
);
/** Kept up to a floor. A floor that is not known limits nothing. */
export const atLeast = (a: Quantity, floor: Quantity): Quantity => apply(AT_LEAST, a, floor);

const WHERE_KNOWN: Operation = {
  value: (x) => (Number.isNaN(x[0]!) ? x[2]! : x[1]!),
  partials: (x) => (Number.isNaN(x[0]!) ? [0, 0, 1] : [0, 1, 0]),
};
/** The second where the first is known, else the third. */
export const whereKnown = (a: Quantity, then: Quantity, otherwise: Quantity): Quantity =>
  apply(WHERE_KNOWN, a, then, otherwise);

/** Taken `below` times where it is negative, `above` times where it is not. */
export const bySign = (a: Quantity, below: number, above: number): Quantity => apply(linearBySign(below, above), a);

function linearBySign(below: number, above: number): Operation {
  const slope = (a: number): number => (a < 0 ? below : above);
  return unary((a) => (slope(a) === 0 && !Number.isNaN(a) ? 0 : slope(a) * a), slope);
}

const ABSOLUTE = linearBySign(-1, 1);
export const abs = (a: Quantity): Quantity => apply(ABSOLUTE, a);

const POSITIVE = linearBySign(0, 1);
/** `max(0, a)` */
export const positive = (a: Quantity): Quantity => apply(POSITIVE, a);

const SQRT = unary(Math.sqrt, (_, y) => slopeOfRoot(1, 2 * y));
/** The square root; NaN below zero, and taken not to move at zero. */
export const sqrt = (a: Quantity): Quantity => apply(SQRT, a);

const HYPOT = binary(
  (a, b) => Math.sqrt(a * a + b * b),
  (a, b, y) => [slopeOfRoot(a, y), slopeOfRoot(b, y)],
);
/** `√(a² + b²)` */
export const hypot = (a: Quantity, b: Quantity): Quantity => apply(HYPOT, a, b);

const LEG = binary(
  (c, a) => (c > 0 ? Math.sqrt(c * c - a * a) : NaN),
  (c, a, y) => [slopeOfRoot(c, y), -slopeOfRoot(a, y)],
);
/** `√(c² − a²)`, the other leg of a right-angled triangle; NaN where the hypotenuse c is the shorter. */
export const leg = (c: Quantity, a: Quantity): Quantity => apply(LEG, c, a);

/** A quotient that is nothing where both are. */
const slopeOfRoot = (numerator: number, root: number): number => (root === 0 ? 0 : numerator / root);

/** The value that stands beside the least key; a key that is not known counts as the least. */
export const besideLeast = (keys: readonly Quantity[], values: readonly Quantity[]): Quantity =>
  apply(besideLeastOf(keys.length), ...keys, ...values);

function besideLeastOf(count: number): Operation {
  const least = (x: readonly number[]): number => {
    let at = 0;
    for (let i = 1; i < count; i++) if (!(x[i]! >= x[at]!) && !Number.isNaN(x[at]!)) at = i;
    return count + at;
  };
  return { value: (x) => x[least(x)]!, partials: (x) => x.map((_, i) => (i === least(x) ? 1 : 0)) };
}

/** Where a residual that grows with its argument is zero between two numbers; NaN where it is not. */
export const root = (lower: number, upper: number, residual: (x: Quantity) => Quantity): Quantity =>
  rootOf(lower, upper, false, residual);

/** The same, but `lower` where the residual is positive there already, and `upper` where it is negative even there. */
export const rootWithin = (lower: number, upper: number, residual: (x: Quantity) => Quantity): Quantity =>
  rootOf(lower, upper, true, residual);

function rootOf(lower: number, upper: number, clamped: boolean, residual: (x: Quantity) => Quantity): Root {
  const x = unknown();
  return { kind: 'root', unknown: x, residual: residual(x), lower, upper, clamped };
}
