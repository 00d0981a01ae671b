import type { ProfileCovariance } from '#body';
import type { Input, Inputs } from './inputs.ts';
import type { Model } from './model.ts';
import { Row, SLOT_COUNT } from './slots.ts';

/** A power of two, so that steps add and divide exactly; small beside any measure, large beside rounding. */
const STEP = 2 ** -5;

/** Every number as it is with one of them moved up, and as it is with it moved down (or left): how all move with it. */
class Moved {
  readonly #rows: Float64Array;
  readonly #up: number;
  readonly #down: number;
  readonly #span: number;

  /** `up` and `down` are places in `rows` where the moved rows begin, `span` is how far apart they are, mm. */
  constructor(rows: Float64Array, up: number, down: number, span: number) {
    this.#rows = rows;
    this.#up = up;
    this.#down = down;
    this.#span = span;
  }

  /** How the number in this place moves with the one that was moved, mm a mm. */
  slope(slot: number): number {
    return snapped((this.#rows[this.#up + slot]! - this.#rows[this.#down + slot]!) / this.#span);
  }
}
export type { Moved };

/** One input, and how all numbers move with it. */
export interface Column {
  readonly input: Input;
  readonly value: number;
  readonly moved: Moved;
}

/** Finding how things move by moving them: the model worked out once as it is, and again with each input nudged. */
export class Nudging {
  readonly base: Float64Array;
  readonly columns: readonly Column[];
  readonly #uncertain: readonly Column[];
  readonly #model: Model;
  readonly #row = new Row();
  /** The row as it is, then every moved row, one after the other. */
  readonly #rows: Float64Array;
  #filled = SLOT_COUNT;
  readonly #related: readonly { readonly i: number; readonly j: number; readonly covariance: number }[];

  constructor(model: Model, inputs: Inputs, covariance: ProfileCovariance | null) {
    this.#model = model;
    // What is nothing and certain adds no term.
    const telling = inputs.described.filter(({ slot, u }) => u !== 0 || inputs.values[slot] !== 0);
    this.#rows = new Float64Array(SLOT_COUNT * (1 + 2 * telling.length));
    this.#rows.set(model.workOut(this.#row));
    this.base = this.#rows.subarray(0, SLOT_COUNT);
    this.columns = telling.map((input) => ({
      input,
      value: inputs.values[input.slot]!,
      moved: this.#moving(input.slot, input.u > 0),
    }));
    this.#uncertain = this.columns.filter(({ input }) => input.u > 0);
    this.#related = covariance ? relatedPairs(this.#uncertain, covariance) : [];
  }

  /** All numbers with the one in place `slot` moved by `by`. The row is reused: read it before the next call. */
  nudged(slot: number, by: number): Float64Array {
    return this.#model.workOut(this.#row, slot, by);
  }

  /** How every number moves with the one in place `slot`, to one side. */
  followers(slot: number): Moved {
    const rows = new Float64Array(2 * SLOT_COUNT);
    rows.set(this.base);
    rows.set(this.nudged(slot, STEP), SLOT_COUNT);
    return new Moved(rows, SLOT_COUNT, 0, STEP);
  }

  /** Central differences for what is uncertain, one-sided for what is exact and enters as it is. */
  #moving(slot: number, central: boolean): Moved {
    const up = this.#keep(this.nudged(slot, STEP));
    if (!central) return new Moved(this.#rows, up, 0, STEP);
    return new Moved(this.#rows, up, this.#keep(this.nudged(slot, -STEP)), 2 * STEP);
  }

  #keep(row: Float64Array): number {
    const at = this.#filled;
    this.#rows.set(row, at);
    this.#filled = at + SLOT_COUNT;
    return at;
  }

  /**
   * Standard uncertainty of `plus − minus` (or of `plus` alone), mm, by the law of propagation with correlation.
   * Source: JCGM 100:2008 (GUM), equation 13.
   */
  uncertainty(plus: number, minus = -1): number {
    let variance = 0;
    const slope = ({ moved }: Column): number => moved.slope(plus) - (minus < 0 ? 0 : moved.slope(minus));
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
