import type { ProfileCovariance } from '#body';
import type { Input, Inputs } from './inputs.ts';
import type { Column, Follower, Hanging, Model, Movers } from './model.ts';
import { INPUT_COUNT, type Row } from './slots.ts';
import type { Steps } from './steps.ts';

/** A rate below this is what rounding leaves of none: of a metre it makes a hundredth of a micrometre. */
const NO_RATE = 1e-8;

/** The rate in this place among some, mm a mm. */
function rateAt(rates: readonly number[], place: number): number {
  const rate = rates[place]!;
  return Math.abs(rate) < NO_RATE ? 0 : rate;
}

/** How every number moves with one of them, mm a mm. */
export class Moved {
  readonly #column: Column;
  readonly #rates: readonly number[];

  /** `rates` are those of the column's chain. */
  constructor(column: Column, rates: readonly number[]) {
    this.#column = column;
    this.#rates = rates;
  }

  /** How the number in this place moves. */
  slope(slot: number): number {
    return rateAt(this.#rates, this.#column.chain.place(slot, this.#column.at));
  }

  /** The dimensions that may move. */
  get followers(): readonly Follower[] {
    return this.#column.followers;
  }

  /** How a follower does. */
  rateOf({ place }: Follower): number {
    return rateAt(this.#rates, place);
  }
}

/** One number moved by hand: what becomes of all that some steps work out. */
export class Nudge {
  readonly #steps: Steps;
  readonly #base: Row;
  readonly #slot: number;
  readonly #following: readonly number[];
  readonly #row: Row;

  /**
   * `following` are steps that hang on the number in place `slot`, in order, with all that lead to them. `row` is another with
   * the numbers of `base`, to be written over.
   */
  constructor(steps: Steps, base: Row, slot: number, following: readonly number[], row: Row) {
    this.#steps = steps;
    this.#base = base;
    this.#slot = slot;
    this.#following = following;
    this.#row = row;
  }

  /** The numbers with this one moved by `mm`, in their places. The row is reused: read it before the next call. */
  by(mm: number): Row {
    this.#row[this.#slot] = this.#base[this.#slot]! + mm;
    this.#steps.workOutAgain(this.#row, this.#following);
    return this.#row;
  }

  /** Leaves the row as it was. */
  undo(): void {
    this.#row[this.#slot] = this.#base[this.#slot]!;
    for (const step of this.#following) {
      const slot = this.#steps.slotOf(step);
      this.#row[slot] = this.#base[slot]!;
    }
  }
}

const UNTOLD: readonly (Input | undefined)[] = Array.from({ length: INPUT_COUNT }, () => undefined);
/** Begun with a fraction: an array of whole numbers alone is made anew when the first fraction is put in. */
const CERTAIN: readonly number[] = Array.from({ length: INPUT_COUNT }, () => 0.5).fill(0);
const ALONE: readonly number[] = Array.from({ length: INPUT_COUNT }, () => -1);

/** A worked-out model: every number as it is, and how all of them move with each other. */
export class Nudging {
  readonly base: Row;
  readonly #model: Model;
  readonly #partials: readonly number[];
  readonly #rates: readonly number[];
  readonly #told: (Input | undefined)[] = UNTOLD.slice();
  /** By their places, the inputs' standard uncertainties, and which row of the covariance is theirs; −1 where none is. */
  readonly #u: number[] = CERTAIN.slice();
  readonly #sharing: number[] = ALONE.slice();
  readonly #covariance: ProfileCovariance['matrix'];
  /** Of the inputs that share errors, while an uncertainty is added up: their rows of the covariance, and the slopes. */
  readonly #places: number[] = [];
  readonly #slopes: number[] = [];
  #nudge: Nudge | undefined;
  #nudged: Row | undefined;

  /** `row` are the model's numbers for the inputs. */
  constructor(model: Model, row: Row, inputs: Inputs, covariance: ProfileCovariance | null) {
    this.#model = model;
    this.base = row;
    this.#partials = model.steps.partials(row);
    this.#rates = model.chain.rates(this.#partials);
    this.#covariance = covariance?.matrix ?? [];
    for (const input of inputs.told) {
      const { slot, value, u, body } = input;
      if (u !== 0 || value !== 0) this.#told[slot] = input;
      if (u === 0) continue;
      this.#u[slot] = u;
      if (covariance !== null && body !== null) this.#sharing[slot] = covariance.names.indexOf(body);
    }
  }

  /** What the number in place `slot` may move with. */
  moversOf(slot: number): Movers {
    return this.#model.moversOf(slot);
  }

  /** How a number moves with an input, by the place of that rate, mm a mm. */
  rate(place: number): number {
    return rateAt(this.#rates, place);
  }

  /** The input in this place, where a number may be told to come from it: what is nothing and certain adds no term. */
  told(input: number): Input | undefined {
    return this.#told[input];
  }

  /** How the number in place `slot` moves with the input in place `input`, mm a mm. */
  slope(slot: number, input: number): number {
    return rateAt(this.#rates, this.#model.chain.place(slot, input));
  }

  /** What hangs on the number in place `slot`. */
  hanging(slot: number): Hanging {
    return this.#model.hanging(slot);
  }

  /** The number in place `slot`, to be moved by hand, with these of the steps that hang on it; the one before is undone. */
  nudge(slot: number, following: readonly number[]): Nudge {
    this.#nudge?.undo();
    this.#nudged ??= this.base.slice();
    return (this.#nudge = new Nudge(this.#model.steps, this.base, slot, following, this.#nudged));
  }

  /** How every number moves with the one in place `slot`. */
  followers(slot: number): Moved {
    const column = this.#model.columnOf(slot);
    const rates = column.chain === this.#model.chain ? this.#rates : column.chain.rates(this.#partials);
    return new Moved(column, rates);
  }

  /**
   * Standard uncertainty of `plus − minus` (or of `plus` alone), mm, by the law of propagation with correlation.
   * Source: JCGM 100:2008 (GUM), equation 13.
   */
  uncertainty(plus: number, minus = -1): number {
    const doubts = this.#model.doubtsOf(plus, minus);
    const rates = this.#rates;
    const places = this.#places;
    const slopes = this.#slopes;
    let sharing = 0;
    let variance = 0;
    for (let i = 0; i < doubts.inputs.length; i++) {
      const input = doubts.inputs[i]!;
      const slope = rateAt(rates, doubts.places[i]!) - rateAt(rates, doubts.minus[i]!);
      if (slope === 0) continue;
      variance += (slope * this.#u[input]!) ** 2;
      const place = this.#sharing[input]!;
      if (place < 0) continue;
      const errors = this.#covariance[place]!;
      for (let k = 0; k < sharing; k++) variance += 2 * slope * slopes[k]! * errors[places[k]!]!;
      places[sharing] = place;
      slopes[sharing] = slope;
      sharing++;
    }
    return Math.sqrt(Math.max(variance, 0));
  }
}
