import { asMade as asMadeOf } from '#fabric';
import type { AssembledDimension, Because, NoAdvice, Piece, PieceDimension } from './advice.ts';
import { because } from './because.ts';
import type { Checked } from './checking.ts';
import type { Decisions } from './decisions.ts';
import type { Driver, Plan, Planned, PlannedOnPiece } from './dimension-plan.ts';
import type { MissingMeasures } from './missing.ts';
import type { Moved, Nudging } from './nudging.ts';
import { drawPiece } from './outline.ts';
import { drawnIn, type Holding, type Leeway } from './rounding.ts';
import { S } from './slots.ts';

/** What the writing of dimensions needs to know besides the numbers. */
export interface Writing {
  readonly plan: Plan;
  readonly nudging: Nudging;
  readonly decisions: Decisions;
  readonly checked: readonly Checked[];
  /** The ease band as far as it may be rounded, down and up, mm of girth. */
  readonly band: Leeway;
  /** Made only where a number is missing. */
  readonly missing: () => MissingMeasures;
  readonly growth: { readonly across: number; readonly along: number };
  readonly seamAllowance: number;
  /** No cap joins the armhole: the sleeve has no advice. */
  readonly noSleeve: NoAdvice | null;
}

/** A driver worked out: how far it may go, and how every number follows it. */
interface Driven {
  readonly leeway: Leeway;
  readonly moved: Moved;
}

/** A dimension that has a value. */
interface Given {
  readonly value: number;
  readonly u: number;
  readonly low: number;
  readonly high: number;
  readonly follows: Record<string, number>;
  readonly because: readonly Because[];
}

/** A number that comes out below nothing, such as a shoulder beside a neck wider than the back. */
const NOTHING_LEFT: NoAdvice = { needs: [], reason: 'Nothing is left here; the checks say what to change.' };
const NO_LEEWAY: Leeway = { down: 0, up: 0 };

/** Writes the dimensions of a sheet, each driver worked out once. */
export class DimensionWriter {
  readonly #w: Writing;
  readonly #holding: readonly Holding[];
  readonly #driven = new Map<number, Driven>();
  readonly #told = new Map<number, Given | NoAdvice>();
  #missing: MissingMeasures | undefined;

  constructor(writing: Writing) {
    this.#w = writing;
    this.#holding = writing.checked
      .filter(({ check, comfort }) => !comfort && (check.verdict === 'fine' || check.verdict === 'tight'))
      .map(({ rule }) => ({ need: rule.need, have: rule.have }));
  }

  assembled(): AssembledDimension[] {
    return this.#w.plan.assembled.map((planned) => this.#whole(planned));
  }

  pieces(): Piece[] {
    const { plan, nudging, decisions, noSleeve } = this.#w;
    return plan.pieces.map(({ piece, make, workedFrom, dimensions }) => {
      const none = piece === 'sleeve' && noSleeve !== null;
      const drawn = none ? null : drawPiece(piece, nudging.base, decisions);
      return {
        piece,
        make,
        mirrored: 0,
        workedFrom,
        ...(drawn && { outline: drawn.outline }),
        joins: drawn?.joins ?? [],
        dimensions: dimensions.map((planned) => this.#onPiece(planned, none)),
      };
    });
  }

  #whole(planned: Planned): AssembledDimension {
    const { name } = planned;
    const given = this.#given(planned, SLEEVE_SLOTS.has(planned.slot));
    if ('needs' in given) return { name, value: null, because: [], noAdvice: given };
    const { value, u, low, high, follows, because } = given;
    return { name, value, u, low, high, follows, because };
  }

  #onPiece(planned: PlannedOnPiece, ofSleeve: boolean): PieceDimension {
    const { name, axis, fabric, joinedEnds } = planned;
    const allowance = joinedEnds * this.#w.seamAllowance;
    const given = this.#given(planned, ofSleeve);
    if ('needs' in given)
      return { name, axis, fabric, value: null, allowance, asMade: null, because: [], noAdvice: given };
    const { value, u, low, high, follows, because } = given;
    const asMade = asMadeOf(value, allowance, this.#w.growth[axis]);
    return { name, axis, fabric, value, allowance, asMade, u, low, high, follows, because };
  }

  /** Pieces share most of their numbers; each is told once and stands in all of them. */
  #given(planned: Planned, ofSleeve: boolean): Given | NoAdvice {
    const { noSleeve } = this.#w;
    if (ofSleeve && noSleeve) return noSleeve;
    const before = this.#told.get(planned.slot);
    if (before) return before;
    const told = this.#tell(planned);
    this.#told.set(planned.slot, told);
    return told;
  }

  #tell(planned: Planned): Given | NoAdvice {
    const { nudging, decisions } = this.#w;
    const { name, slot } = planned;
    const value = nudging.base[slot]!;
    if (Number.isNaN(value)) return (this.#missing ??= this.#w.missing()).reasonFor(slot);
    if (value < 0) return NOTHING_LEFT;
    const { slope, driven } = this.#drivenBy(planned.driver, slot);
    const a = slope * driven.leeway.down;
    const b = slope * driven.leeway.up;
    return {
      value,
      u: nudging.uncertainty(slot),
      low: Math.max(value + Math.min(a, b), Math.min(value, 0)),
      high: value + Math.max(a, b),
      follows: this.#follows(name, slot, slope, driven.moved),
      because: because(slot, nudging, decisions),
    };
  }

  /** A driver that does not move the number leaves it to be rounded alone, or not at all where what drives it is made. */
  #drivenBy(driver: Driver, slot: number): { slope: number; driven: Driven } {
    const driven = this.#drive(driver);
    const slope = driver.slot === slot ? 1 : driven.moved.slope(slot);
    if (slope !== 0 && !Number.isNaN(slope)) return { slope, driven };
    const alone = this.#drive({ slot, range: 'length' });
    return { slope: 1, driven: isMade(driver.slot, this.#w.decisions) ? { ...alone, leeway: NO_LEEWAY } : alone };
  }

  #drive(driver: Driver): Driven {
    const before = this.#driven.get(driver.slot);
    if (before) return before;
    const { nudging, decisions } = this.#w;
    const wanted = isMade(driver.slot, decisions) ? NO_LEEWAY : this.#wanted(driver);
    const driven = {
      leeway: drawnIn(nudging.nudge(driver.slot), wanted, this.#holding),
      moved: nudging.followers(driver.slot),
    };
    this.#driven.set(driver.slot, driven);
    return driven;
  }

  #wanted({ range }: Driver): Leeway {
    const { band, decisions } = this.#w;
    const room = decisions.rules['length-room'];
    if (range === 'length') return { down: -room, up: room };
    const share = range === 'band' ? 1 : decisions.rules[range];
    return { down: band.down * share, up: band.up * share };
  }

  #follows(name: string, slot: number, slope: number, moved: Moved): Record<string, number> {
    const { plan, nudging } = this.#w;
    const follows: Record<string, number> = {};
    for (const follower of plan.names) {
      const rate = moved.slope(follower.slot);
      if (rate === 0 || follower.slot === slot || follower.name === name || Number.isNaN(nudging.base[follower.slot]!))
        continue;
      follows[follower.name] = Math.round((rate / slope) * 1e6) / 1e6;
    }
    return follows;
  }
}

const SLEEVE_SLOTS: ReadonlySet<number> = new Set([
  S.sleeve,
  S.underarmSeam,
  S.sleeveTopFlat,
  S.cuffFlat,
  S.reachedNapeToCuff,
]);

/** Whether a number is fixed by a piece already made: it cannot be rounded any more. */
function isMade(slot: number, { made, construction }: Decisions): boolean {
  const dropped = construction === 'drop-shoulder' || construction === 'squared-drop';
  switch (slot) {
    case S.mid:
      return made.back || made.front;
    case S.armhole:
    case S.raglan:
      return made.armhole || made.cap || made.sleeveRaglan || (made.sleeveTop && dropped);
    case S.sleeveGirth:
      return made.sleeveTop;
    case S.cap:
      return made.cap;
    case S.sleeveRaglan:
      return made.sleeveRaglan;
    case S.cuff:
      return made.cuff;
    case S.sleeve:
      return made.sleeve;
    case S.length:
      return made.bodyToUnderarm;
    case S.neckWidth:
      return made.neckWidth;
    default:
      return false;
  }
}
