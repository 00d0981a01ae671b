import type { Tape } from './tape.ts';

/** The place of a derivative that is always zero. */
export const NONE = 0;

/**
 * The derivatives of every place of a tape by some of them (the columns), by the chain rule forwards. Laid out once, sparse:
 * only a derivative that can differ from zero has a place, and what is the same for all inputs is computed here. A column is
 * taken to move by itself, whatever it depends on; a place that is held moves with no other.
 */
export class Jacobian {
  readonly #columns: number;
  /** Row by row, the place of the derivative by each column. */
  readonly #places: Int16Array;
  /** The derivatives that never change; 0 for the others. */
  readonly #fixed: readonly number[] = [];
  /** The products that the others are sums of, in order: which partial, times which derivative, is added to which. */
  readonly #partials: Int16Array;
  readonly #from: Int16Array;
  readonly #to: Int16Array;

  constructor(tape: Tape, columns: readonly number[], held: ReadonlySet<number> = new Set()) {
    this.#columns = columns.length;
    this.#places = new Int16Array(tape.size * columns.length).fill(NONE);
    const fixed = [0];
    const make = (row: number, column: number): number => {
      const at = row * this.#columns + column;
      if (this.#places[at] === NONE) this.#places[at] = fixed.push(0) - 1;
      return this.#places[at]!;
    };
    columns.forEach((place, column) => (fixed[make(place, column)] = 1));
    const varying = new Set<number>();
    const products: (readonly [partial: number, from: number, to: number])[] = [];
    for (let row = tape.inputs; row < tape.size; row++) {
      if (held.has(row)) continue;
      const sources = tape.sources(row);
      for (let column = 0; column < columns.length; column++) {
        const into = sources.flatMap((source, i) => {
          const from = this.place(source, column);
          return from === NONE ? [] : [[tape.start(row) + i, from, make(row, column)] as const];
        });
        if (tape.isSum(row) && !into.some(([, from]) => varying.has(from)))
          for (const [partial, from, to] of into) fixed[to]! += tape.factor(partial) * fixed[from]!;
        else
          for (const each of into) {
            varying.add(each[2]);
            products.push(each);
          }
      }
    }
    this.#partials = Int16Array.from(products, ([partial]) => partial);
    this.#from = Int16Array.from(products, ([, from]) => from);
    this.#to = Int16Array.from(products, ([, , to]) => to);
    this.#fixed = fixed;
  }

  /** Where among the derivatives that of a row by a column is; `NONE` where it is always zero. */
  place(row: number, column: number): number {
    return this.#places[row * this.#columns + column]!;
  }

  /** All derivatives, each in its place, for the partial derivatives of the tape's places. */
  evaluate(partials: readonly number[]): readonly number[] {
    const derivatives = this.#fixed.slice();
    for (let i = 0; i < this.#partials.length; i++) {
      const partial = partials[this.#partials[i]!]!;
      // What does not count adds nothing, known or not.
      if (partial !== 0) derivatives[this.#to[i]!]! += partial * derivatives[this.#from[i]!]!;
    }
    return derivatives;
  }
}
