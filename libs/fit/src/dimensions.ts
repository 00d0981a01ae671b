import { asMade as asMadeOf } from '#fabric';
import type { AssembledDimension, Because, NoAdvice, Piece, PieceDimension } from './advice.ts';
import { because } from './because.ts';
import type { Decisions } from './decisions.ts';
import type { Plan, Planned, PlannedOnPiece } from './dimension-plan.ts';
import type { Figure } from './figures.ts';
import { NONE } from './messages/none.ts';
import type { MissingMeasures } from './missing.ts';
import type { Nudging } from './nudging.ts';
import { drawPiece } from './outline.ts';
import { S, SLOT_COUNT } from './slots.ts';

/** What the writing of dimensions needs to know besides the numbers. */
export interface Writing {
  readonly plan: Plan;
  readonly nudging: Nudging;
  readonly decisions: Decisions;
  /** By their places in the row. */
  readonly figures: readonly (Figure | undefined)[];
  /** Made only where a number is missing. */
  readonly missing: () => MissingMeasures;
  readonly growth: { readonly across: number; readonly along: number };
  readonly seamAllowance: number;
  /** No cap joins the armhole: the sleeve has no advice. */
  readonly noSleeve: NoAdvice | null;
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
const NOTHING_LEFT: NoAdvice = { code: 'nothing-left', params: NONE, needs: [] };

/** Writes the dimensions of a sheet. */
export class DimensionWriter {
  readonly #w: Writing;
  /** By the places of their numbers in the row. */
  readonly #told = new Array<Given | NoAdvice | undefined>(SLOT_COUNT);

  constructor(writing: Writing) {
    this.#w = writing;
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
        joins: drawn?.joins ?? [],
        dimensions: dimensions.map((planned) => this.#onPiece(planned, none)),
        ...(drawn && { outline: drawn.outline }),
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
    return (this.#told[planned.slot] ??= this.#tell(planned));
  }

  #tell(planned: Planned): Given | NoAdvice {
    const { nudging, decisions, figures, missing } = this.#w;
    const { name, slot } = planned;
    const figure = figures[slot];
    if (!figure) return Number.isNaN(nudging.base[slot]!) ? missing().reasonFor(slot) : NOTHING_LEFT;
    const { value, u, low, high } = figure;
    return {
      value,
      u,
      low,
      high,
      follows: this.#follows(name, slot, figure),
      because: because(slot, u, nudging, decisions),
    };
  }

  #follows(name: string, slot: number, { slope, moved }: Figure): Record<string, number> {
    const { nudging } = this.#w;
    const follows: Record<string, number> = {};
    for (const follower of moved.followers) {
      const rate = moved.rateOf(follower);
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
