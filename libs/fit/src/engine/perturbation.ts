import type { Quantity } from '#measure';
import type { Values } from './laid-out.ts';
import type { Tape } from './tape.ts';

/** One quantity moved, with some of the places that depend on it. */
export class Perturbation {
  readonly #tape: Tape;
  readonly #place: number;
  readonly #at: number;
  readonly #path: readonly number[];
  readonly #values: Values;

  /** `path` are the places that follow, in order; `values` stay as they are. */
  constructor(tape: Tape, values: Values, of: Quantity, path: readonly number[]) {
    this.#tape = tape;
    this.#place = tape.place(of);
    this.#at = values[this.#place]!;
    this.#path = path;
    this.#values = values.slice();
  }

  /** Moves it by so much from where it was. */
  by(change: number): this {
    this.#values[this.#place] = this.#at + change;
    this.#tape.evaluateAgain(this.#values, this.#path);
    return this;
  }

  /** The value of a quantity on the path. */
  readonly value = (of: Quantity): number => {
    return this.#values[this.#tape.place(of)]!;
  };
}
