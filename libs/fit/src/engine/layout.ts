import type { Quantity } from '#measure';
import { Jacobian, NONE } from './jacobian.ts';
import { Tape } from './tape.ts';

/** Where the derivatives by a quantity are. */
interface Column {
  readonly jacobian: Jacobian;
  readonly at: number;
}

/** An input that a quantity depends on, by its place, and the place of the derivative by it. */
export interface Dependency {
  readonly input: number;
  readonly derivative: number;
}

/** An output that moves with a quantity: which one, its place, and the place of the derivative. */
interface Follower {
  readonly output: number;
  readonly place: number;
  readonly derivative: number;
}

/** The constraints that depend on a quantity: in proportion to it, or not, with the places between it and those. */
export interface Constrained {
  readonly linear: readonly Quantity[];
  readonly nonlinear: readonly Quantity[];
  readonly path: readonly number[];
}

/** What a model is laid out from. */
export interface Model {
  readonly inputs: readonly Quantity[];
  /** All that will be asked for. */
  readonly named: readonly Quantity[];
  /** The quantities that are rounded: how all others move with them is laid out with the rest. */
  readonly rounded: readonly Quantity[];
  /** The quantities of which a sheet lists how they follow a rounded one. */
  readonly outputs: readonly Quantity[];
  /** The quantities that must not be negative, whatever is rounded. */
  readonly constraints: readonly Quantity[];
}

/** A model laid out once for all requests: its tape, its derivatives, and what depends on what. */
export class Layout {
  readonly tape: Tape;
  readonly #jacobian: Jacobian;
  readonly #outputs: readonly Quantity[];
  readonly #constraints: readonly Quantity[];
  readonly #columns = new Map<Quantity, Column>();
  readonly #dependencies = new Map<Quantity, readonly Dependency[]>();
  readonly #followers = new Map<Quantity, readonly Follower[]>();
  readonly #constrained = new Map<Quantity, Constrained>();
  readonly #paths = new Map<Quantity, Map<Quantity, readonly number[]>>();

  constructor({ inputs, named, rounded, outputs, constraints }: Model) {
    this.tape = new Tape(inputs, [...named, ...rounded, ...outputs, ...constraints]);
    const columns = [...new Set([...inputs, ...rounded])];
    this.#jacobian = new Jacobian(
      this.tape,
      columns.map((each) => this.tape.place(each)),
    );
    columns.forEach((each, at) => this.#columns.set(each, { jacobian: this.#jacobian, at }));
    this.#outputs = outputs;
    this.#constraints = constraints;
  }

  /** The derivatives by the inputs and the rounded quantities. */
  get jacobian(): Jacobian {
    return this.#jacobian;
  }

  /** The derivatives of everything by a quantity. */
  column(by: Quantity): Column {
    return remembered(this.#columns, by, () => ({ jacobian: new Jacobian(this.tape, [this.tape.place(by)]), at: 0 }));
  }

  /** The inputs that a quantity depends on, in their order. */
  dependencies(of: Quantity): readonly Dependency[] {
    return remembered(this.#dependencies, of, () => {
      const row = this.tape.place(of);
      return Array.from({ length: this.tape.inputs }, (_, input) => ({
        input,
        derivative: this.#jacobian.place(row, input),
      })).filter(({ derivative }) => derivative !== NONE);
    });
  }

  /** The outputs that may move with a quantity. */
  followers(by: Quantity): readonly Follower[] {
    return remembered(this.#followers, by, () => {
      const { jacobian, at } = this.column(by);
      return this.#outputs
        .map((each, output) => {
          const place = this.tape.place(each);
          return { output, place, derivative: jacobian.place(place, at) };
        })
        .filter(({ derivative }) => derivative !== NONE);
    });
  }

  constrained(by: Quantity): Constrained {
    return remembered(this.#constrained, by, () => this.#constrainedBy(by));
  }

  /** The places between two quantities, in the order in which they are evaluated. */
  path(from: Quantity, to: Quantity): readonly number[] {
    const paths = remembered(this.#paths, from, () => new Map<Quantity, readonly number[]>());
    return remembered(paths, to, () => this.#pathOf(this.#dependents(from).reached, [to]));
  }

  #constrainedBy(by: Quantity): Constrained {
    const { reached, bent } = this.#dependents(by);
    const reaching = this.#constraints.filter((each) => reached.has(this.tape.place(each)));
    const nonlinear = reaching.filter((each) => bent.has(this.tape.place(each)));
    return {
      linear: reaching.filter((each) => !nonlinear.includes(each)),
      nonlinear,
      path: this.#pathOf(reached, nonlinear),
    };
  }

  /** The places that depend on a quantity; those of them that do not in proportion. */
  #dependents(on: Quantity): { readonly reached: ReadonlySet<number>; readonly bent: ReadonlySet<number> } {
    const from = this.tape.place(on);
    const reached = new Set<number>();
    const bent = new Set<number>();
    for (let place = this.tape.inputs; place < this.tape.size; place++) {
      const sources = this.tape.sources(place);
      if (place === from || !sources.some((source) => source === from || reached.has(source))) continue;
      reached.add(place);
      if (!this.tape.isSum(place) || sources.some((source) => bent.has(source))) bent.add(place);
    }
    return { reached, bent };
  }

  /** Those of some places that lead to a quantity. */
  #pathOf(among: ReadonlySet<number>, to: readonly Quantity[]): readonly number[] {
    const wanted = new Set(to.map((each) => this.tape.place(each)));
    const path: number[] = [];
    for (let place = this.tape.size - 1; place >= this.tape.inputs; place--) {
      if (!wanted.has(place) || !among.has(place)) continue;
      path.push(place);
      for (const source of this.tape.sources(place)) wanted.add(source);
    }
    return path.reverse();
  }
}

function remembered<K, V>(map: Map<K, V>, key: K, make: () => V): V {
  const before = map.get(key);
  if (before !== undefined) return before;
  const made = make();
  map.set(key, made);
  return made;
}
