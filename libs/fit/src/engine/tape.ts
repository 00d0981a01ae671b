import type { Operation, Quantity, Sum } from '#measure';
import { implicitFunction } from './implicit-function.ts';
import type { LaidOut, Values } from './laid-out.ts';

/**
 * Quantities laid out in the order in which they are evaluated: inputs first, each further place computed from places before
 * it. A sum that nobody names and that only another sum takes is folded into that one.
 */
export class Tape implements LaidOut {
  readonly #inputs: number;
  readonly #named: ReadonlySet<Quantity>;
  readonly #places = new Map<Quantity, number>();
  /** By step: its operation (null for a sum), its constant, and where its sources begin. */
  readonly #operations: (Operation | null)[] = [];
  readonly #constants: number[] = [];
  readonly #starts: number[] = [0];
  /** The places of the sources of all steps, and how many times a sum takes each. */
  readonly #sources: number[] = [];
  readonly #sourcesOf: (readonly number[])[] = [];
  /** By step, where the values of its sources are gathered: making a list for each took a tenth of the time of an evaluation. */
  readonly #gathered: number[][] = [];
  /** As many values as there are places, none of them known. */
  readonly #unknown: Values;
  readonly #factors: number[] = [];

  /** `named` are the quantities that will be asked for. */
  constructor(inputs: readonly Quantity[], named: readonly Quantity[]) {
    this.#inputs = inputs.length;
    this.#named = new Set(named);
    inputs.forEach((each, place) => this.#places.set(each, place));
    for (const each of named) this.#lay(each);
    this.#unknown = Array.from({ length: this.size }, () => NaN);
  }

  /** How many places there are. */
  get size(): number {
    return this.#inputs + this.#operations.length;
  }

  get inputs(): number {
    return this.#inputs;
  }

  place(of: Quantity): number {
    return this.#places.get(of)!;
  }

  sources(place: number): readonly number[] {
    return place < this.#inputs ? [] : this.#sourcesOf[place - this.#inputs]!;
  }

  start(place: number): number {
    return this.#starts[place - this.#inputs]!;
  }

  /** How many times a sum takes a source, counted among the sources of all places. */
  factor(source: number): number {
    return this.#factors[source]!;
  }

  isSum(place: number): boolean {
    return place >= this.#inputs && this.#operations[place - this.#inputs] === null;
  }

  evaluate(inputs: readonly number[]): Values {
    const v = this.#unknown.slice();
    for (let place = 0; place < this.#inputs; place++) v[place] = inputs[place]!;
    for (let place = this.#inputs; place < v.length; place++) v[place] = this.#valueAt(place, v);
    return v;
  }

  /** Evaluates some places again, in the order given. */
  evaluateAgain(v: Values, places: readonly number[]): void {
    for (const place of places) v[place] = this.#valueAt(place, v);
  }

  partials(v: Values): readonly number[] {
    const all = this.#factors.slice();
    this.#operations.forEach((operation, step) => {
      if (operation === null) return;
      const start = this.#starts[step]!;
      operation
        .partials(this.#arguments(step, v), v[this.#inputs + step]!)
        .forEach((partial, i) => (all[start + i] = partial));
    });
    return all;
  }

  #lay(quantity: Quantity): number {
    const before = this.#places.get(quantity);
    if (before !== undefined) return before;
    const [operation, constant, sources, factors] = this.#step(quantity);
    this.#operations.push(operation);
    this.#constants.push(constant);
    this.#sources.push(...sources);
    this.#sourcesOf.push(sources);
    this.#gathered.push(sources.map(() => NaN));
    this.#factors.push(...factors);
    this.#starts.push(this.#sources.length);
    this.#places.set(quantity, this.size - 1);
    return this.size - 1;
  }

  #step(quantity: Quantity): [Operation | null, number, readonly number[], readonly number[]] {
    switch (quantity.kind) {
      case 'input':
        throw new Error('Unknown input.');
      case 'sum': {
        const terms = new Map<number, number>();
        const constant = this.#collect(quantity, 1, terms);
        return [null, constant, [...terms.keys()], [...terms.values()]];
      }
      case 'applied': {
        const sources = quantity.sources.map((source) => this.#lay(source));
        return [quantity.operation, 0, sources, sources.map(() => 1)];
      }
      case 'root': {
        const { operation, sources } = implicitFunction(quantity, (inputs, named) => new Tape(inputs, named));
        const places = sources.map((source) => this.#lay(source));
        return [operation, 0, places, places.map(() => 1)];
      }
    }
  }

  /** Adds up how many times a sum takes each place, the sums folded into it included; returns its constant. */
  #collect(sum: Sum, factor: number, terms: Map<number, number>): number {
    let constant = factor * sum.constant;
    for (const { times, of } of sum.terms) {
      if (this.#folds(of)) constant += this.#collect(of, factor * times, terms);
      else {
        const place = this.#lay(of);
        terms.set(place, (terms.get(place) ?? 0) + factor * times);
      }
    }
    return constant;
  }

  /** Whether a quantity is folded into the sum that takes it. */
  #folds(quantity: Quantity): quantity is Sum {
    return quantity.kind === 'sum' && !this.#named.has(quantity) && !this.#places.has(quantity);
  }

  #valueAt(place: number, v: Values): number {
    const step = place - this.#inputs;
    const operation = this.#operations[step]!;
    if (operation !== null) return operation.value(this.#arguments(step, v));
    let sum = this.#constants[step]!;
    const end = this.#starts[step + 1]!;
    for (let k = this.#starts[step]!; k < end; k++) sum += this.#factors[k]! * v[this.#sources[k]!]!;
    return sum;
  }

  #arguments(step: number, v: Values): readonly number[] {
    const x = this.#gathered[step]!;
    const sources = this.#sourcesOf[step]!;
    for (let k = 0; k < x.length; k++) x[k] = v[sources[k]!]!;
    return x;
  }
}
