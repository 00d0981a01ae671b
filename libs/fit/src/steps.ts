import type { Row } from './slots.ts';

/** A number taken so many times. */
export type Term = readonly [times: number, slot: number];

/** Works a number out from up to eight others; NaN where none comes of them. */
type Solver = (...sources: readonly number[]) => number;

/** So many sources a solver takes. */
const MOST_SOURCES = 8;

const SUM = 0;
const PRODUCT = 1;
const SMALLER = 2;
const LARGER = 3;
const AT_MOST = 4;
const AT_LEAST = 5;
const BENT = 6;
const SOLVED = 7;

/** How far a solved number's sources are moved to see how it moves, mm: small beside any measure, large beside rounding, and a power of two, which adds and divides exactly. */
const STEP = 2 ** -9;

/**
 * The model as a row of steps. Each works out one number from numbers before it, and knows how it moves with them: what
 * is added up or limited exactly, what is solved for by central differences.
 */
export class Steps {
  readonly #slots: number[] = [];
  readonly #kinds: number[] = [];
  /** Where each step's sources begin; one more entry, the end of the last. */
  readonly #starts: number[] = [0];
  readonly #sources: number[] = [];
  /** Beside each source, how many times it is taken in a sum, or a bent number's slope. */
  readonly #times: number[] = [];
  readonly #solvers: (Solver | null)[] = [];
  /** All steps but the sums: how their numbers move hangs on where the row is. */
  readonly #bending: number[] = [];
  /** Where a solver's sources are laid side by side. */
  readonly #gathered: number[] = Array.from({ length: MOST_SOURCES }, () => NaN);

  /** A sum of numbers, each so many times. What is taken no times is left out, known or not. */
  sum(slot: number, ...terms: readonly Term[]): void {
    for (const [times, source] of terms) if (times !== 0) this.#from(source, times);
    this.#add(slot, SUM);
  }

  /** Another number, as it is. */
  same(slot: number, source: number): void {
    this.#from(source, 1);
    this.#add(slot, SUM);
  }

  product(slot: number, a: number, b: number): void {
    this.#fromBoth(a, b);
    this.#add(slot, PRODUCT);
  }

  /** The smaller of two; of equals, the first. NaN where either is not known. */
  smaller(slot: number, a: number, b: number): void {
    this.#fromBoth(a, b);
    this.#add(slot, SMALLER);
  }

  /** The larger of two; of equals, the first. NaN where either is not known. */
  larger(slot: number, a: number, b: number): void {
    this.#fromBoth(a, b);
    this.#add(slot, LARGER);
  }

  /** A number kept down to a ceiling. A ceiling that is not known keeps nothing: the check that watches over it says so. */
  atMost(slot: number, source: number, ceiling: number): void {
    this.#fromBoth(source, ceiling);
    this.#add(slot, AT_MOST);
  }

  /** A number kept up to a floor. A floor that is not known keeps nothing: the check that watches over it says so. */
  atLeast(slot: number, source: number, floor: number): void {
    this.#fromBoth(source, floor);
    this.#add(slot, AT_LEAST);
  }

  /** A number taken so many times below nothing, and so many times above. */
  bent(slot: number, source: number, below: number, above: number): void {
    this.#from(source, below);
    this.#from(source, above);
    this.#add(slot, BENT);
  }

  /** What a function of up to eight numbers makes of them. */
  solved(slot: number, solver: Solver, ...sources: readonly number[]): void {
    for (const source of sources) this.#from(source, 1);
    this.#add(slot, SOLVED, solver);
  }

  /** A number that hangs on no other. */
  always(slot: number, value: number): void {
    this.#add(slot, SOLVED, () => value);
  }

  /** A row of all numbers: the inputs in their places, NaN where not known, and what the steps work out from them. */
  workOut(inputs: Row): Row {
    const v = inputs.slice();
    const slots = this.#slots;
    for (let step = 0; step < slots.length; step++) v[slots[step]!] = this.#valueOf(step, v);
    return v;
  }

  /** How many there are. */
  get length(): number {
    return this.#slots.length;
  }

  /** Where the number of a step stands. */
  slotOf(step: number): number {
    return this.#slots[step]!;
  }

  /** Whether a step's number moves in proportion with its sources, as far as they go. */
  isStraight(step: number): boolean {
    return this.#kinds[step] === SUM;
  }

  /** Where a step's sources begin, counted among those of all steps. */
  startOf(step: number): number {
    return this.#starts[step]!;
  }

  /** How many times a source is taken in a sum; counted among the sources of all steps. */
  timesOf(source: number): number {
    return this.#times[source]!;
  }

  /** Where the numbers stand that a step works its own out from. */
  sourcesOf(step: number): readonly number[] {
    return this.#sources.slice(this.#starts[step]!, this.#starts[step + 1]!);
  }

  /** Works out these steps again. */
  workOutAgain(v: Row, steps: readonly number[]): void {
    for (const step of steps) v[this.#slots[step]!] = this.#valueOf(step, v);
  }

  /** How each step's number moves with each of its sources, where the row is: one for each source of all steps. */
  partials(v: Row): readonly number[] {
    const all = this.#times.slice();
    for (const step of this.#bending) this.#partialsOf(step, v, all);
    return all;
  }

  #from(source: number, times: number): void {
    this.#sources.push(source);
    this.#times.push(times);
  }

  #fromBoth(a: number, b: number): void {
    this.#from(a, 1);
    this.#from(b, 1);
  }

  #add(slot: number, kind: number, solver: Solver | null = null): void {
    this.#slots.push(slot);
    this.#kinds.push(kind);
    this.#solvers.push(solver);
    if (kind !== SUM) this.#bending.push(this.#slots.length - 1);
    this.#starts.push(this.#sources.length);
  }

  #valueOf(step: number, v: Row): number {
    const start = this.#starts[step]!;
    const kind = this.#kinds[step]!;
    if (kind === SUM) {
      const end = this.#starts[step + 1]!;
      let sum = 0;
      for (let k = start; k < end; k++) sum += this.#times[k]! * v[this.#sources[k]!]!;
      return sum;
    }
    if (kind === SOLVED) {
      this.#gather(step, v);
      return this.#solve(step);
    }
    const a = v[this.#sources[start]!]!;
    const b = v[this.#sources[start + 1]!]!;
    switch (kind) {
      case PRODUCT:
        return a * b;
      case SMALLER:
        return Math.min(a, b);
      case LARGER:
        return Math.max(a, b);
      case AT_MOST:
        return b < a ? b : a;
      case AT_LEAST:
        return b > a ? b : a;
      default: {
        const times = this.#times[a < 0 ? start : start + 1]!;
        return times === 0 ? 0 : a * times;
      }
    }
  }

  /** The solved number of the sources that were gathered; what a solver does not take is not handed over. */
  #solve(step: number): number {
    const of = this.#gathered;
    const solver = this.#solvers[step]!;
    const count = this.#starts[step + 1]! - this.#starts[step]!;
    if (count <= 3) return solver(of[0]!, of[1]!, of[2]!);
    if (count <= 5) return solver(of[0]!, of[1]!, of[2]!, of[3]!, of[4]!);
    return solver(of[0]!, of[1]!, of[2]!, of[3]!, of[4]!, of[5]!, of[6]!, of[7]!);
  }

  /** Lays a step's sources side by side, NaN past the last. */
  #gather(step: number, v: Row): void {
    const start = this.#starts[step]!;
    const count = this.#starts[step + 1]! - start;
    for (let k = 0; k < MOST_SOURCES; k++) this.#gathered[k] = k < count ? v[this.#sources[start + k]!]! : NaN;
  }

  #partialsOf(step: number, v: Row, into: number[]): void {
    const start = this.#starts[step]!;
    const end = this.#starts[step + 1]!;
    const a = v[this.#sources[start]!]!;
    const b = v[this.#sources[start + 1]!]!;
    switch (this.#kinds[step]!) {
      case PRODUCT:
        into[start] = b;
        into[start + 1] = a;
        break;
      case SMALLER:
      case AT_MOST:
        into[b < a ? start : start + 1] = 0;
        break;
      case LARGER:
      case AT_LEAST:
        into[b > a ? start : start + 1] = 0;
        break;
      case BENT:
        // The same source stands twice, with either slope; the one that does not hold counts nothing.
        into[a < 0 ? start + 1 : start] = 0;
        break;
      case SOLVED:
        this.#gather(step, v);
        for (let k = start; k < end; k++) into[k] = this.#solvedPartial(step, v[this.#slots[step]!]!, k - start);
    }
  }

  /** By central differences; to one side where the other has no solution, and not at all where neither has. */
  #solvedPartial(step: number, here: number, k: number): number {
    const source = this.#gathered[k]!;
    this.#gathered[k] = source + STEP;
    const up = this.#solve(step);
    this.#gathered[k] = source - STEP;
    const down = this.#solve(step);
    this.#gathered[k] = source;
    if (Number.isNaN(up)) return Number.isNaN(down) ? 0 : (here - down) / STEP;
    return Number.isNaN(down) ? (up - here) / STEP : (up - down) / (2 * STEP);
  }
}
