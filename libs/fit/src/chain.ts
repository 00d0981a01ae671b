import { SLOT_COUNT } from './slots.ts';
import type { Steps } from './steps.ts';

/** The place of a rate that cannot be, as of a number that does not move with the column: nothing, always. */
export const NOWHERE = 0;

/**
 * The chain rule through a row of steps, laid out once and worked out for any inputs: how every number moves with each of
 * some, the columns. Only what can move has a rate, and each rate is added up from those before it. A column's own number is
 * taken to move by itself, whatever it hangs on.
 */
export class Chain {
  readonly #width: number;
  /** Number by number, a place for each column. */
  readonly #places: Int16Array;
  /** The rates that are the same wherever the row is; 0 for the others. */
  readonly #always: readonly number[];
  /** What the others are added up from, in order: which source's partial, times the rate in which place, goes to which. */
  readonly #partials: Int16Array;
  readonly #from: Int16Array;
  readonly #to: Int16Array;

  /** `of` are the places of the columns' numbers in the row. */
  constructor(steps: Steps, of: readonly number[]) {
    this.#width = of.length;
    this.#places = new Int16Array(SLOT_COUNT * of.length).fill(NOWHERE);
    const always = [0];
    const placeOf = (slot: number, column: number): number => {
      const at = slot * this.#width + column;
      if (this.#places[at] === NOWHERE) this.#places[at] = always.push(0) - 1;
      return this.#places[at]!;
    };
    of.forEach((slot, column) => (always[placeOf(slot, column)] = 1));
    const varying = new Set<number>();
    const links: (readonly [partial: number, from: number, to: number])[] = [];
    for (let step = 0; step < steps.length; step++) {
      for (let column = 0; column < of.length; column++) {
        const into: (typeof links)[number][] = [];
        steps.sourcesOf(step).forEach((source, at) => {
          const from = this.place(source, column);
          if (from !== NOWHERE) into.push([steps.startOf(step) + at, from, placeOf(steps.slotOf(step), column)]);
        });
        if (steps.isStraight(step) && !into.some(([, from]) => varying.has(from)))
          for (const [partial, from, to] of into) always[to]! += steps.timesOf(partial) * always[from]!;
        else
          for (const link of into) {
            varying.add(link[2]);
            links.push(link);
          }
      }
    }
    this.#partials = Int16Array.from(links, ([partial]) => partial);
    this.#from = Int16Array.from(links, ([, from]) => from);
    this.#to = Int16Array.from(links, ([, , to]) => to);
    this.#always = always;
  }

  /** Where among the rates is how a number moves with a column; `NOWHERE` where it cannot. */
  place(slot: number, column: number): number {
    return this.#places[slot * this.#width + column]!;
  }

  /** How the numbers move, each rate in its place; `partials` are those of the steps where the row is. */
  rates(partials: readonly number[]): readonly number[] {
    const rates = this.#always.slice();
    const of = this.#partials;
    const from = this.#from;
    const to = this.#to;
    for (let i = 0; i < of.length; i++) {
      const partial = partials[of[i]!]!;
      // What is of no account adds nothing, known or not.
      if (partial !== 0) rates[to[i]!]! += partial * rates[from[i]!]!;
    }
    return rates;
  }
}
