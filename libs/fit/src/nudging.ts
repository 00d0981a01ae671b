import type { ProfileCovariance } from '#body';
import type { Input, Inputs } from './inputs.ts';
import type { Model } from './model.ts';
import { INPUT_COUNT, Row, SLOT_COUNT } from './slots.ts';

/** A power of two, so that steps add and divide exactly; small beside any measure, large beside rounding. */
const STEP = 2 ** -5;

/** One input moved up and down, and all that moved with it. */
class Column {
  readonly input: Input;
  readonly value: number;
  readonly #up: Float64Array;
  readonly #down: Float64Array;
  readonly #span: number;

  /** `down` is the unmoved row for what is exact and enters as it is: one-sided differences do for that. */
  constructor(input: Input, value: number, up: Float64Array, down: Float64Array, span: number) {
    this.input = input;
    this.value = value;
    this.#up = up;
    this.#down = down;
    this.#span = span;
  }

  /** How the number in this place moves with the input, mm a mm. */
  slope(slot: number): number {
    return snapped((this.#up[slot]! - this.#down[slot]!) / this.#span);
  }
}
export type { Column };

/** Finding how things move by moving them: the model worked out once as it is, and again with each input nudged. */
export class Nudging {
  readonly base: Float64Array;
  readonly columns: readonly Column[];
  readonly #uncertain: readonly Column[];
  readonly #model: Model;
  readonly #row = new Row();
  readonly #related: readonly { readonly i: number; readonly j: number; readonly covariance: number }[];

  constructor(model: Model, inputs: Inputs, covariance: ProfileCovariance | null) {
    this.#model = model;
    this.base = model.workOut(this.#row).slice();
    // What is nothing and certain adds no term.
    this.columns = inputs.described
      .filter(({ slot, u }) => u !== 0 || inputs.values[slot] !== 0)
      .map((input) => this.#columnOf(input, inputs.values[input.slot]!));
    this.#uncertain = this.columns.filter(({ input }) => input.u > 0);
    this.#related = covariance ? relatedPairs(this.#uncertain, covariance) : [];
  }

  /** All numbers with the one in place `slot` moved by `by`. The row is reused: read it before the next call. */
  nudged(slot: number, by: number): Float64Array {
    return this.#model.workOut(this.#row, slot, by);
  }

  /** How every number moves with the one in place `slot`, mm a mm, to one side. */
  followers(slot: number): Float64Array {
    const moved = this.nudged(slot, STEP);
    const slopes = new Float64Array(SLOT_COUNT);
    for (let k = INPUT_COUNT; k < SLOT_COUNT; k++) slopes[k] = snapped((moved[k]! - this.base[k]!) / STEP);
    return slopes;
  }

  #columnOf(input: Input, value: number): Column {
    const up = this.nudged(input.slot, STEP).slice();
    if (input.u === 0) return new Column(input, value, up, this.base, STEP);
    return new Column(input, value, up, this.nudged(input.slot, -STEP).slice(), 2 * STEP);
  }

  /**
   * Standard uncertainty of `plus − minus` (or of `plus` alone), mm, by the law of propagation with correlation.
   * Source: JCGM 100:2008 (GUM), equation 13.
   */
  uncertainty(plus: number, minus = -1): number {
    let variance = 0;
    const slope = (column: Column): number => column.slope(plus) - (minus < 0 ? 0 : column.slope(minus));
    for (const column of this.#uncertain) variance += (slope(column) * column.input.u) ** 2;
    for (const { i, j, covariance } of this.#related) {
      variance += 2 * slope(this.#uncertain[i]!) * slope(this.#uncertain[j]!) * covariance;
    }
    return Math.sqrt(Math.max(variance, 0));
  }
}

/** Rounds a slope to ten places: differences of doubles carry noise below that, and 0.5 should read 0.5. */
function snapped(slope: number): number {
  return Math.round(slope * 1e10) / 1e10;
}

/** Pairs of inputs that share error, once each. */
function relatedPairs(
  columns: readonly Column[],
  { names, matrix }: ProfileCovariance,
): { i: number; j: number; covariance: number }[] {
  const places = columns.map(({ input }) => (input.body === null ? -1 : names.indexOf(input.body)));
  const pairs: { i: number; j: number; covariance: number }[] = [];
  for (let i = 0; i < columns.length; i++) {
    for (let j = i + 1; j < columns.length; j++) {
      if (places[i]! < 0 || places[j]! < 0) continue;
      const covariance = matrix[places[i]!]![places[j]!]!;
      if (covariance !== 0) pairs.push({ i, j, covariance });
    }
  }
  return pairs;
}
