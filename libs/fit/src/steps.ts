import { emptyRow, type Row, SLOT_COUNT } from './slots.ts';

/** A number taken so many times. */
export type Term = readonly [times: number, slot: number];

/** Works a number out from up to eight others; NaN where none comes of them. */
type Solver = (...sources: [number, number, number, number, number, number, number, number]) => number;

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
 * is added up or limited exactly, what is solved for by central differences. From that follow every number, how each moves
 * with any other, and what becomes of all when one of them is moved.
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
  /** For each number, the first step after the one that works it out; 0 for those that are given. */
  readonly #after = emptyRow();

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
    for (let step = 0; step < this.#slots.length; step++) v[this.#slots[step]!] = this.#valueOf(step, v);
    return v;
  }

  /** The steps whose numbers hang on the one in this place, in order. `reached` comes empty, and has 1 where a number does. */
  following(slot: number, reached: Row): readonly number[] {
    const steps: number[] = [];
    reached[slot] = 1;
    for (let step = this.#after[slot]!; step < this.#slots.length; step++) {
      const end = this.#starts[step + 1]!;
      for (let k = this.#starts[step]!; k < end; k++) {
        if (reached[this.#sources[k]!] === 1) {
          reached[this.#slots[step]!] = 1;
          steps.push(step);
          break;
        }
      }
    }
    return steps;
  }

  /** Works out these steps again. */
  workOutAgain(v: Row, steps: readonly number[]): void {
    for (const step of steps) v[this.#slots[step]!] = this.#valueOf(step, v);
  }

  /** How each step's number moves with each of its sources, where the row is. */
  partials(v: Row): readonly number[] {
    const all = this.#times.slice();
    for (let step = 0; step < this.#slots.length; step++) this.#partialsOf(step, v, all);
    return all;
  }

  /**
   * How every number moves with each of some: `of` are their places. Row by row, one entry for each of `of`; a number on the
   * way is taken to move by itself, whatever it hangs on.
   */
  rates(of: readonly number[], partials: readonly number[]): Float64Array {
    const width = of.length;
    const rates = new Float64Array(SLOT_COUNT * width);
    // Most numbers move with a few of `of` only: those are listed beside each, so that the rest need no work.
    const moving: number[][] = [];
    of.forEach((slot, column) => {
      rates[slot * width + column] = 1;
      (moving[slot] ??= []).push(column);
    });
    const listed = of.map(() => -1);
    for (let step = 0; step < this.#slots.length; step++) {
      const slot = this.#slots[step]!;
      const own = (moving[slot] ??= []);
      for (const column of own) listed[column] = step;
      const end = this.#starts[step + 1]!;
      for (let k = this.#starts[step]!; k < end; k++) {
        const source = this.#sources[k]!;
        const columns = moving[source];
        // What is of no account adds nothing, known or not.
        if (columns === undefined || partials[k] === 0) continue;
        for (const column of columns) {
          if (listed[column] !== step) {
            listed[column] = step;
            own.push(column);
          }
          rates[slot * width + column]! += partials[k]! * rates[source * width + column]!;
        }
      }
    }
    return rates;
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
    this.#after[slot] = this.#slots.length;
    this.#kinds.push(kind);
    this.#solvers.push(solver);
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
    if (kind === SOLVED) return this.#solve(step, v, -1, 0);
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

  /** The solved number with one of its sources moved; −1 moves none. */
  #solve(step: number, v: Row, moved: number, by: number): number {
    const start = this.#starts[step]!;
    const end = this.#starts[step + 1]!;
    const source = (k: number): number => (k < end ? v[this.#sources[k]!]! + (k === moved ? by : 0) : NaN);
    return this.#solvers[step]!(
      source(start),
      source(start + 1),
      source(start + 2),
      source(start + 3),
      source(start + 4),
      source(start + 5),
      source(start + 6),
      source(start + 7),
    );
  }

  #partialsOf(step: number, v: Row, into: number[]): void {
    const start = this.#starts[step]!;
    const end = this.#starts[step + 1]!;
    const a = v[this.#sources[start]!]!;
    const b = v[this.#sources[start + 1]!]!;
    switch (this.#kinds[step]!) {
      case SUM:
        break;
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
        for (let k = start; k < end; k++) into[k] = this.#solvedPartial(step, v, k);
    }
  }

  /** By central differences; to one side where the other has no solution, and not at all where neither has. */
  #solvedPartial(step: number, v: Row, source: number): number {
    const here = v[this.#slots[step]!]!;
    const up = this.#solve(step, v, source, STEP);
    const down = this.#solve(step, v, source, -STEP);
    if (Number.isNaN(up)) return Number.isNaN(down) ? 0 : (here - down) / STEP;
    return Number.isNaN(down) ? (up - here) / STEP : (up - down) / (2 * STEP);
  }
}
