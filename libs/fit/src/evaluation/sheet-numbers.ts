import type { Quantity } from '#measure';
import type { Follows } from '../messages/advice.ts';
import { type Evaluation, type Leeway, roundingRange } from '../engine/index.ts';
import { easeLeeway } from './advised-ease.ts';
import { marginOf } from '../checks/judge.ts';
import type { Computed } from './compute.ts';
import type { Evaluated } from './evaluated.ts';
import { byItself, type Planned, type Rounded } from '../model/planned.ts';

/** A number of the sheet, mm: how sure it is, how far it may be rounded, and what moves with it. */
export interface SheetNumber {
  readonly value: number;
  readonly u: number;
  readonly low: number;
  readonly high: number;
  readonly follows: readonly Follows[];
}

const NO_LEEWAY: Leeway = { down: 0, up: 0 };

/** What is left of a depth however it is rounded, mm (assumed). */
const LEAST_DEPTH = 1;

/**
 * Computes the numbers of a sheet; none for a quantity that is not known, or is less than nothing, such as a shoulder beside a neck
 * wider than the back. Each is computed once.
 */
export class SheetNumbers {
  readonly #evaluated: Evaluated;
  readonly #evaluation: Evaluation;
  readonly #band: Leeway;
  readonly #holding: ReadonlySet<Quantity>;
  readonly #leeways = new Map<Quantity, Leeway>();
  readonly #numbers = new Map<Quantity, SheetNumber | null>();

  /** `band` is how far the chest's girth may go for the ease's sake; `holding` the constraints that hold. */
  constructor(evaluated: Evaluated, band: Leeway, holding: ReadonlySet<Quantity>) {
    this.#evaluated = evaluated;
    this.#evaluation = evaluated.evaluation;
    this.#band = band;
    this.#holding = holding;
  }

  of(planned: Planned): SheetNumber | null {
    const before = this.#numbers.get(planned.quantity);
    if (before !== undefined) return before;
    const number = this.#compute(planned);
    this.#numbers.set(planned.quantity, number);
    return number;
  }

  #compute({ quantity, rounded }: Planned): SheetNumber | null {
    const value = this.#evaluation.value(quantity);
    if (!(value >= 0)) return null;
    const { by, leeway } = this.#roundedBy(quantity, rounded);
    const slope = this.#evaluation.derivative(quantity, by);
    const ends = [slope * leeway.down, slope * leeway.up] as const;
    return {
      value,
      u: this.#evaluation.uncertainty(quantity),
      low: Math.max(value + Math.min(...ends), 0),
      high: value + Math.max(...ends),
      follows: this.#follows(by, slope),
    };
  }

  /** What rounds a number, and how far. A number that does not move with what should round it is rounded alone, or not at all. */
  #roundedBy(quantity: Quantity, rounded: Rounded): { readonly by: Quantity; readonly leeway: Leeway } {
    const slope = this.#evaluation.derivative(quantity, rounded.quantity);
    if (slope !== 0 && !Number.isNaN(slope)) return { by: rounded.quantity, leeway: this.#leeway(rounded) };
    return { by: quantity, leeway: rounded.fixed ? NO_LEEWAY : this.#leeway(byItself(quantity)) };
  }

  #leeway(rounded: Rounded): Leeway {
    const { quantity } = rounded;
    const before = this.#leeways.get(quantity);
    if (before !== undefined) return before;
    const leeway = rounded.fixed
      ? NO_LEEWAY
      : roundingRange(quantity, this.#wanted(rounded), this.#evaluation, this.#holding);
    this.#leeways.set(quantity, leeway);
    return leeway;
  }

  #wanted({ quantity, range }: Rounded): Leeway {
    const room = this.#evaluated.choices.rules['length-room'];
    switch (range) {
      case 'band':
        return this.#band;
      case 'length':
        return { down: -room, up: room };
      case 'depth':
        return { down: -Math.min(room, Math.max(this.#evaluation.value(quantity) - LEAST_DEPTH, 0)), up: room };
    }
  }

  /** What moves with a number. Those that are the same number elsewhere move with it too. */
  #follows(by: Quantity, slope: number): Follows[] {
    const { placed } = this.#evaluated.model;
    return this.#evaluation.followers(by).map(({ output, rate }) => {
      const { piece, planned } = placed[output]!;
      return { piece, name: planned.name, slope: Math.round((rate / slope) * 1e6) / 1e6 };
    });
  }
}

/** The numbers of a request's sheet. A check that fails at the value, or is of comfort alone, limits no rounding. */
export function sheetNumbers(computed: Computed): SheetNumbers {
  const { choices, model, evaluation } = computed;
  const v = evaluation.value;
  const holding = model.checks.flatMap(({ rule, traced }) =>
    traced !== null && !rule.comfort(choices) && rule.applies(choices, v(traced.need)) && marginOf(traced, v) >= 0
      ? traced.margin
      : [],
  );
  return new SheetNumbers(computed, easeLeeway(computed), new Set(holding));
}
