import type { Quantity } from '#measure';
import type {
  Change,
  Field,
  FoundRemedy,
  KnownGarment,
  PlainRemedy,
  RemedySearch,
  Steps,
  TracedCheck,
} from '../checks/check.ts';
import { isSure, marginOf } from '../checks/judge.ts';
import type { Computed } from '../evaluation/compute.ts';
import type { RemedyMessage } from '../messages/remedy-codes.ts';
import { INPUTS } from '../model/inputs.ts';
import { keepsBack, keepsFront, keepsWidth } from '../model/neck.ts';
import { EASE_STEP, EASES } from './ease-that-helps.ts';
import { evaluateChange } from './evaluate-change.ts';

/** So much more ease is offered at most, mm: what is looser than that is another garment (assumed). */
const MOST_EASE = 100;

/** A field of the design that sets a quantity, and what that is now. */
interface Adjustable {
  readonly of: Quantity;
  readonly field: Field;
  readonly now: number;
}

/** What a field becomes that is moved by so much: a whole number, for one that is easy to write. */
const adjusted = (now: number, by: number): number =>
  by < 0 ? Math.floor(now + by + 1e-9) : Math.ceil(now + by - 1e-9);

/**
 * Searches for changes of the design that make a check hold and none fail that held. A check that holds already, or is of comfort
 * alone, is only helped where no other becomes uncertain for it.
 */
export class Search implements RemedySearch {
  readonly choices: KnownGarment['choices'];
  readonly garment: KnownGarment['garment'];
  readonly figure: KnownGarment['figure'];
  readonly kappa: number;
  readonly values: KnownGarment['values'];
  readonly v: KnownGarment['v'];
  readonly #check: TracedCheck;
  readonly #measured: number;
  readonly #computed: Computed;

  /** `measured` is the uncertainty of the check's margin by what was measured. */
  constructor(check: TracedCheck, measured: number, computed: Computed, known: KnownGarment) {
    this.choices = known.choices;
    this.garment = known.garment;
    this.figure = known.figure;
    this.kappa = known.kappa;
    this.values = known.values;
    this.v = known.v;
    this.#check = check;
    this.#measured = measured;
    this.#computed = computed;
  }

  more(of: Quantity, field: Field, by: Steps, text: PlainRemedy, rest: Change = {}): FoundRemedy[] {
    return this.#adjust({ of, field, now: this.v(of) }, by, text, rest);
  }

  less(of: Quantity, field: Field, text: PlainRemedy, rest: Change = {}): FoundRemedy[] {
    const now = this.v(of);
    return this.#adjust({ of, field, now }, { step: -5, most: now * 0.6 }, text, rest);
  }

  moreEase(): FoundRemedy[] {
    const { evaluation } = this.#computed;
    const ease = EASES.find((each) => evaluation.derivative(this.#check.margin, each) > 0);
    if (ease === undefined) return [];
    const by = { step: EASE_STEP, most: MOST_EASE };
    return ease === INPUTS.chosenEase
      ? this.more(ease, 'easeMm', by, 'more-ease')
      : this.more(ease, 'easeChangeMm', by, 'wider-round');
  }

  choice(change: Change, message: RemedyMessage): FoundRemedy[] {
    return this.#offer(change, message);
  }

  neckAsItStands(): Change {
    const { neck } = this.garment;
    if (!(this.v(neck.scale) > 1)) return {};
    return {
      ...(!keepsWidth(this.choices) && { neckWidthMm: Math.round(this.v(neck.width)) }),
      ...(!keepsFront(this.choices) && { frontNeckDepthMm: Math.round(this.v(neck.front)) }),
      ...(!keepsBack(this.choices) && { backNeckDepthMm: Math.round(this.v(neck.back)) }),
    };
  }

  /**
   * The least number of steps for which the check holds with little uncertainty; else, where it fails, for which it holds at all; none
   * where another check would fail for it.
   */
  #adjust(adjustable: Adjustable, by: Steps, text: PlainRemedy, rest: Change = {}): FoundRemedy[] {
    const { now, field } = adjustable;
    for (const change of this.#helping(adjustable, by)) {
      const to = adjusted(now, change);
      const found = this.#offer({ ...rest, [field]: to }, { code: text, params: { byMm: Math.abs(to - now) } });
      if (found.length > 0) return found;
    }
    return [];
  }

  /** By how much a quantity is to be moved, mm, for the check to hold with little uncertainty, and to hold, while all choices stay. */
  #helping({ of, now }: Adjustable, { step, most }: Steps): number[] {
    const { evaluation } = this.#computed;
    const path = evaluation.layout.path(of, this.#check.margin);
    if (path.length === 0) return [];
    const margin = marginOf(this.#check, this.v);
    const perturbation = evaluation.perturbation(of, path);
    const holding: number[] = [];
    for (let by = step; Math.abs(by) <= most; by += step) {
      const moved = perturbation.by(adjusted(now, by) - now);
      const then = marginOf(this.#check, moved.value);
      if (!(then > Math.max(margin + 1e-6, 0))) continue;
      if (isSure(then, this.#check, this.#measured, moved.value, this.choices)) return [by, ...holding];
      if (margin < 0 && holding.length === 0) holding.push(by);
    }
    return holding;
  }

  /** A change, where it does make the check hold: one that holds already is to be left little uncertainty. */
  #offer(change: Change, message: RemedyMessage): FoundRemedy[] {
    const before = marginOf(this.#check, this.v);
    const outcome = evaluateChange(change, this.#check, this.#computed);
    if (outcome === null || !(outcome.margin > Math.max(before, 0))) return [];
    const { margin, spoilt, tightened } = outcome;
    if (before >= 0 && !isSure(margin, this.#check, this.#measured, this.v, this.choices)) return [];
    if (tightened > 0 && (before >= 0 || this.#check.rule.comfort(this.choices))) return [];
    return [{ message, change, spoilt: spoilt + tightened }];
  }
}
