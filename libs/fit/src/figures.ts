import { easeLeeway } from './advised-ease.ts';
import type { CheckRule } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import type { Driver, Planned } from './dimension-plan.ts';
import type { FitRequest } from './fit-request.ts';
import { isMade } from './made.ts';
import type { Moved, Nudging } from './nudging.ts';
import { drawnIn, type Leeway } from './rounding.ts';
import { S, SLOT_COUNT } from './slots.ts';

/** The number of a dimension, mm: how sure it is, how far it may be rounded, and how it and all others move as it is. */
export interface Figure {
  readonly value: number;
  readonly u: number;
  readonly low: number;
  readonly high: number;
  readonly slope: number;
  readonly moved: Moved;
}

/** A driver worked out: how far it may go, and how every number follows it. */
interface Driven {
  readonly leeway: Leeway;
  readonly moved: Moved;
}

const NO_LEEWAY: Leeway = { down: 0, up: 0 };

/**
 * The numbers of all dimensions, by their places in the row; none where a number is not known, or is below nothing, such as a
 * shoulder beside a neck wider than the back.
 */
export function figuresOf(
  request: FitRequest,
  planned: readonly Planned[],
  nudging: Nudging,
  d: Decisions,
  holding: ReadonlySet<CheckRule>,
): readonly (Figure | undefined)[] {
  const drivers = new Drivers(nudging, d, holding, easeLeeway(request, nudging, d));
  const figures = new Array<Figure | undefined>(SLOT_COUNT);
  for (const { slot, driver } of planned) {
    const value = nudging.base[slot]!;
    if (!(value >= 0)) continue;
    const { slope, driven } = drivers.of(driver, slot);
    const a = slope * driven.leeway.down;
    const b = slope * driven.leeway.up;
    figures[slot] = {
      value,
      u: nudging.uncertainty(slot),
      low: Math.max(value + Math.min(a, b), 0),
      high: value + Math.max(a, b),
      slope,
      moved: driven.moved,
    };
  }
  return figures;
}

/** What numbers are rounded by, each worked out once. */
class Drivers {
  readonly #nudging: Nudging;
  readonly #decisions: Decisions;
  readonly #band: Leeway;
  readonly #holding: ReadonlySet<CheckRule>;
  readonly #driven = new Map<number, Driven>();

  /** `band` is how far the ease may be rounded, mm of girth. */
  constructor(nudging: Nudging, d: Decisions, holding: ReadonlySet<CheckRule>, band: Leeway) {
    this.#nudging = nudging;
    this.#decisions = d;
    this.#band = band;
    this.#holding = holding;
  }

  /** A driver that does not move the number leaves it to be rounded alone, or not at all where what drives it is made. */
  of(driver: Driver, slot: number): { slope: number; driven: Driven } {
    const driven = this.#drive(driver);
    const slope = driver.slot === slot ? 1 : driven.moved.slope(slot);
    if (slope !== 0 && !Number.isNaN(slope)) return { slope, driven };
    const alone = this.#drive({ slot, range: 'length' });
    return { slope: 1, driven: isMade(driver.slot, this.#decisions) ? { ...alone, leeway: NO_LEEWAY } : alone };
  }

  #drive(driver: Driver): Driven {
    const before = this.#driven.get(driver.slot);
    if (before) return before;
    const { slot } = driver;
    const driven = {
      leeway: isMade(slot, this.#decisions)
        ? NO_LEEWAY
        : drawnIn(slot, this.#wanted(driver), this.#nudging, this.#holding),
      moved: this.#nudging.followers(slot),
    };
    this.#driven.set(slot, driven);
    return driven;
  }

  #wanted({ range }: Driver): Leeway {
    const { rules, taken } = this.#decisions;
    const room = rules['length-room'];
    if (range === 'length') return { down: -room, up: room };
    const negative = range === 'upper-arm-ease' && !taken.upperArm && this.#nudging.base[S.ease]! < 0;
    const share = range === 'band' ? 1 : rules[negative ? 'upper-arm-negative-ease' : range];
    return { down: this.#band.down * share, up: this.#band.up * share };
  }
}
