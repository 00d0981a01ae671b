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

/** A place of the sheet that moves with a quantity, and the place of the derivative. */
interface Moving {
  readonly place: number;
  readonly derivative: number;
}

/**
 * The constraints that depend on a quantity that is rounded: in proportion to it, or not; what of the sheet moves with it, and the places
 * between the sheet and those constraints.
 */
export interface Constrained {
  readonly moving: readonly Moving[];
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
  /** Those that stay when another is rounded: what was solved is not solved again. */
  readonly solved: readonly Quantity[];
  /** The numbers of the sheet from which everything else is worked out once it is made. */
  readonly sheet: readonly Quantity[];
  /** The quantities that must not be negative, whatever is rounded. */
  readonly constraints: readonly Quantity[];
}

/** A model laid out once for all requests: its tape, its derivatives, and what depends on what. */
export class Layout {
  readonly tape: Tape;
  /** The derivatives of the plan by the inputs. */
  readonly planned: Jacobian;
  /** The derivatives by the inputs of what is worked out from a sheet that is made: its numbers are fixed. */
  readonly judged: Jacobian;
  readonly #outputs: readonly Quantity[];
  readonly #constraints: readonly Quantity[];
  readonly #inputs: ReadonlyMap<Quantity, number>;
  readonly #sheet: ReadonlySet<number>;
  readonly #solved: ReadonlySet<number>;
  readonly #columns = new Map<Quantity, Column>();
  readonly #dependencies = new Map<Quantity, readonly Dependency[]>();
  readonly #judgedDependencies = new Map<Quantity, readonly Dependency[]>();
  readonly #followers = new Map<Quantity, readonly Follower[]>();
  readonly #constrained = new Map<Quantity, Constrained>();
  readonly #paths = new Map<Quantity, Map<Quantity, readonly number[]>>();

  constructor({ inputs, named, rounded, outputs, solved, sheet, constraints }: Model) {
    this.tape = new Tape(inputs, [...named, ...rounded, ...outputs, ...solved, ...sheet, ...constraints]);
    const placesOf = (all: readonly Quantity[]): number[] => all.map((each) => this.tape.place(each));
    this.#inputs = new Map(inputs.map((each, at) => [each, at]));
    this.#sheet = new Set(placesOf(sheet));
    this.#solved = new Set(placesOf(solved));
    this.planned = new Jacobian(this.tape, placesOf(inputs));
    this.judged = new Jacobian(this.tape, placesOf(inputs), this.#sheet);
    const columns = [...new Set(rounded)];
    const following = new Jacobian(this.tape, placesOf(columns), this.#solved);
    columns.forEach((each, at) => this.#columns.set(each, { jacobian: following, at }));
    this.#outputs = outputs;
    this.#constraints = constraints;
  }

  /** The derivatives of everything by a quantity: by an input those of the plan, by any other those of what follows it. */
  column(by: Quantity): Column {
    const input = this.#inputs.get(by);
    if (input !== undefined && !this.#columns.has(by)) return { jacobian: this.planned, at: input };
    return remembered(this.#columns, by, () => ({
      jacobian: new Jacobian(this.tape, [this.tape.place(by)], this.#solved),
      at: 0,
    }));
  }

  /** The inputs that a quantity of the plan depends on, in their order. */
  dependencies(of: Quantity): readonly Dependency[] {
    return remembered(this.#dependencies, of, () => this.#dependenciesIn(this.planned, of));
  }

  /** The inputs that a quantity depends on that is worked out from a sheet that is made. */
  judgedDependencies(of: Quantity): readonly Dependency[] {
    return remembered(this.#judgedDependencies, of, () => this.#dependenciesIn(this.judged, of));
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
    return remembered(paths, to, () =>
      this.#pathOf(this.#dependents(new Set([this.tape.place(from)]), new Set()).reached, [to]),
    );
  }

  #dependenciesIn(jacobian: Jacobian, of: Quantity): readonly Dependency[] {
    const row = this.tape.place(of);
    return Array.from({ length: this.tape.inputs }, (_, input) => ({
      input,
      derivative: jacobian.place(row, input),
    })).filter(({ derivative }) => derivative !== NONE);
  }

  #constrainedBy(by: Quantity): Constrained {
    const { jacobian, at } = this.column(by);
    // What is derived from the sheet is rounded by itself where it is asked for.
    const moving = [...new Set([...this.#sheet, this.tape.place(by)])]
      .map((place) => ({ place, derivative: jacobian.place(place, at) }))
      .filter(({ derivative }) => derivative !== NONE);
    const { reached, bent } = this.#dependents(new Set(moving.map(({ place }) => place)), this.#sheet);
    const reaching = this.#constraints.filter((each) => reached.has(this.tape.place(each)));
    const nonlinear = reaching.filter((each) => bent.has(this.tape.place(each)));
    return {
      moving,
      linear: reaching.filter((each) => !nonlinear.includes(each)),
      nonlinear,
      path: this.#pathOf(reached, reaching),
    };
  }

  /** The places that depend on some, through none that is held; those of them that do not in proportion. */
  #dependents(
    on: ReadonlySet<number>,
    held: ReadonlySet<number>,
  ): { readonly reached: ReadonlySet<number>; readonly bent: ReadonlySet<number> } {
    const reached = new Set<number>();
    const bent = new Set<number>();
    for (let place = this.tape.inputs; place < this.tape.size; place++) {
      const sources = this.tape.sources(place);
      if (on.has(place) || held.has(place)) continue;
      if (!sources.some((source) => on.has(source) || reached.has(source))) continue;
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
