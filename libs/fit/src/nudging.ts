import type { ProfileCovariance } from '#body';
import type { Input, Inputs } from './inputs.ts';
import { emptyRow, type Row } from './slots.ts';
import type { Steps } from './steps.ts';

/** A rate below this is what rounding leaves of none: of a metre it makes a hundredth of a micrometre. */
const NO_RATE = 1e-8;

/** How every number moves with one of them. */
export class Moved {
  readonly #rates: Float64Array;
  readonly #width: number;
  readonly #column: number;

  /** `rates` has a row of `width` entries for every number, this one's in place `column`. */
  constructor(rates: Float64Array, width: number, column: number) {
    this.#rates = rates;
    this.#width = width;
    this.#column = column;
  }

  /** How the number in this place moves, mm a mm. */
  slope(slot: number): number {
    const rate = this.#rates[slot * this.#width + this.#column]!;
    return Math.abs(rate) < NO_RATE ? 0 : rate;
  }
}

/** One number moved by hand: what becomes of all. */
export class Nudge {
  readonly #steps: Steps;
  readonly #base: Row;
  readonly #slot: number;
  readonly #reached = emptyRow();
  readonly #following: readonly number[];
  readonly #row: Row;

  constructor(steps: Steps, base: Row, slot: number) {
    this.#steps = steps;
    this.#base = base;
    this.#slot = slot;
    this.#following = steps.following(slot, this.#reached);
    this.#row = base.slice();
  }

  /** Whether the number in this place hangs on the one that is moved. */
  reaches(slot: number): boolean {
    return this.#reached[slot] === 1;
  }

  /** All numbers with this one moved by `mm`. The row is reused: read it before the next call. */
  by(mm: number): Row {
    this.#row[this.#slot] = this.#base[this.#slot]! + mm;
    this.#steps.workOutAgain(this.#row, this.#following);
    return this.#row;
  }
}

/** One input, and how all numbers move with it. */
export interface Column {
  readonly input: Input;
  readonly value: number;
  readonly moved: Moved;
}

/** A worked-out model: every number as it is, and how all of them move with each other. */
export class Nudging {
  readonly base: Row;
  readonly columns: readonly Column[];
  readonly #uncertain: readonly Column[];
  readonly #steps: Steps;
  readonly #partials: readonly number[];
  readonly #drivers: ReadonlyMap<number, Moved>;
  readonly #shared: readonly (readonly number[])[] | null;

  /** `drivers` are places of numbers whose followers will be asked for. */
  constructor(steps: Steps, inputs: Inputs, drivers: readonly number[], covariance: ProfileCovariance | null) {
    this.#steps = steps;
    this.base = steps.workOut(inputs.values);
    this.#partials = steps.partials(this.base);
    // What is nothing and certain adds no term.
    const telling = inputs.described.filter(({ slot, u }) => u !== 0 || inputs.values[slot] !== 0);
    const of = [...telling.map(({ slot }) => slot), ...drivers];
    const rates = steps.rates(of, this.#partials);
    this.columns = telling.map((input, column) => ({
      input,
      value: inputs.values[input.slot]!,
      moved: new Moved(rates, of.length, column),
    }));
    this.#drivers = new Map(drivers.map((slot, at) => [slot, new Moved(rates, of.length, telling.length + at)]));
    this.#uncertain = this.columns.filter(({ input }) => input.u > 0);
    this.#shared = covariance && sharedErrors(this.#uncertain, covariance);
  }

  /** The number in place `slot`, to be moved by hand. */
  nudge(slot: number): Nudge {
    return new Nudge(this.#steps, this.base, slot);
  }

  /** How every number moves with the one in place `slot`. */
  followers(slot: number): Moved {
    return this.#drivers.get(slot) ?? new Moved(this.#steps.rates([slot], this.#partials), 1, 0);
  }

  /**
   * Standard uncertainty of `plus − minus` (or of `plus` alone), mm, by the law of propagation with correlation.
   * Source: JCGM 100:2008 (GUM), equation 13.
   */
  uncertainty(plus: number, minus = -1): number {
    const at: number[] = [];
    const slopes: number[] = [];
    let variance = 0;
    for (let i = 0; i < this.#uncertain.length; i++) {
      const { moved, input } = this.#uncertain[i]!;
      const slope = moved.slope(plus) - (minus < 0 ? 0 : moved.slope(minus));
      if (slope === 0) continue;
      variance += (slope * input.u) ** 2;
      const shared = this.#shared?.[i];
      if (shared) for (let k = 0; k < at.length; k++) variance += 2 * slope * slopes[k]! * shared[at[k]!]!;
      at.push(i);
      slopes.push(slope);
    }
    return Math.sqrt(Math.max(variance, 0));
  }
}

/** Covariance of each input with every other, 0 where they share no error. */
function sharedErrors(columns: readonly Column[], { names, matrix }: ProfileCovariance): number[][] {
  const places = columns.map(({ input }) => (input.body === null ? -1 : names.indexOf(input.body)));
  return places.map((i) => places.map((j) => (i < 0 || j < 0 ? 0 : matrix[i]![j]!)));
}
