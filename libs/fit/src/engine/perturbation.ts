import type { Quantity } from '#measure';
import type { Values } from './laid-out.ts';
import type { Tape } from './tape.ts';

/** A place that moves, and how fast. */
interface Move {
  readonly place: number;
  readonly rate: number;
}

/** Some places moved together, with some of the places that depend on them. */
export class Perturbation {
  readonly #tape: Tape;
  readonly #moves: readonly Move[];
  readonly #at: readonly number[];
  readonly #path: readonly number[];
  readonly #values: Values;

  /** `path` are the places that follow, in order; `values` stay as they are. */
  constructor(tape: Tape, values: Values, moves: readonly Move[], path: readonly number[]) {
    this.#tape = tape;
    this.#moves = moves;
    this.#at = moves.map(({ place }) => values[place]!);
    this.#path = path;
    this.#values = values.slice();
  }

  /** Moves them by so much from where they were, each times its rate. */
  by(change: number): this {
    this.#moves.forEach(({ place, rate }, i) => (this.#values[place] = this.#at[i]! + rate * change));
    this.#tape.evaluateAgain(this.#values, this.#path);
    return this;
  }

  /** The value of a quantity that was moved, or lies on the path. */
  readonly value = (of: Quantity): number => {
    return this.#values[this.#tape.place(of)]!;
  };
}
