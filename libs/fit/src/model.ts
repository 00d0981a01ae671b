import { armholeSteps, bodySteps, widthSteps } from './body-shape.ts';
import { Chain } from './chain.ts';
import { CHECK_RULES, type CheckRule, isComfort } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import { type Plan, planOf } from './dimension-plan.ts';
import { girthSteps } from './girths.ts';
import { lengthSteps } from './lengths.ts';
import { neckSteps } from './neck.ts';
import type { Rules } from './rules.ts';
import { sleeveSteps } from './sleeve-shape.ts';
import { INPUT_COUNT, unknownRow } from './slots.ts';
import { Steps } from './steps.ts';
import { wearingSteps } from './wearing.ts';

const INPUTS: readonly number[] = Array.from({ length: INPUT_COUNT }, (_, slot) => slot);

/** So many models are remembered for one table of rules; the oldest makes room. */
const MOST = 64;
const MODELS = new WeakMap<Rules, Map<string, Model>>();

/** The model for what was decided. Sizes and the wearer's tape do not enter it: a child's constants are inputs. */
export function modelOf(d: Decisions): Model {
  const ofRules = MODELS.get(d.rules) ?? kept(MODELS, d.rules, new Map<string, Model>());
  const kind = kindOf(d);
  const before = ofRules.get(kind);
  if (before) return before;
  const [oldest] = ofRules.keys();
  if (oldest !== undefined && ofRules.size >= MOST) ofRules.delete(oldest);
  return kept(ofRules, kind, new Model(d));
}

/** What was made, now kept for the next time. */
function kept<K, V>(by: { set: (key: K, value: V) => unknown }, key: K, made: V): V {
  by.set(key, made);
  return made;
}

/** All that the model hangs on besides the rules, in one word. */
function kindOf(d: Decisions): string {
  return `${d.silhouette} ${d.construction} ${d.neckline} ${d.hem} ${d.lengthFrom} ${d.refConstruction} ${flags(d.taken)} ${flags(d.made)} ${d.easeFromGarment} ${d.ownNeckWidth} ${d.ownFrontNeck} ${d.ownBackNeck} ${d.customLength} ${d.hipReached} ${d.hipGoverns} ${d.layerArm} ${d.layerWrist} ${d.refLayerArm} ${d.refLayerWrist} ${d.sleeveFromCentreBack} ${d.refWidthGiven} ${d.ribUsable} ${d.mainUsable} ${d.mainMeasured} ${d.closeFitting}`;
}

function flags(all: object): string {
  let word = '';
  for (const name in all) word += (all as Record<string, boolean>)[name] ? '1' : '0';
  return word;
}

function stepsOf(d: Decisions): Steps {
  const steps = new Steps();
  girthSteps(steps, d);
  lengthSteps(steps, d);
  widthSteps(steps, d);
  neckSteps(steps, d);
  armholeSteps(steps, d);
  bodySteps(steps, d);
  if (d.silhouette !== 'vest') sleeveSteps(steps, d);
  wearingSteps(steps, d);
  return steps;
}

/** What hangs on a number. */
export interface Hanging {
  /** The steps that do and that a check hangs on in turn, in order; none where the check does not. */
  readonly to: (check: CheckRule) => readonly number[];
  /**
   * The checks that do and that may draw it in: those whose margin moves in proportion with it, and the others, with the
   * steps that lead to them.
   */
  readonly straight: readonly CheckRule[];
  readonly bent: readonly CheckRule[];
  readonly toBent: readonly number[];
}

/**
 * The whole model for what was decided: from measures, choices and rules to every finished measurement and every check's
 * need and have. An input that is not known is NaN, and so is all that needs it. What follows from the decisions alone is
 * laid out once: what a sheet tells, what moves with what, what hangs on what.
 */
export class Model {
  readonly steps: Steps;
  readonly plan: Plan;
  readonly #chains = new Map<number, Chain>();
  readonly #hanging = new Map<number, Hanging>();
  /** Checks that may apply, and that draw a rounding in. */
  readonly #drawing: readonly CheckRule[];
  #whole: Chain | undefined;
  readonly #inputs: (readonly number[])[] = [];

  constructor(d: Decisions) {
    this.steps = stepsOf(d);
    this.plan = planOf(d);
    this.#drawing = CHECK_RULES.filter((rule) => !isComfort(rule, d) && rule.applies(d, unknownRow()));
  }

  /** How all numbers move with each input, in its place as a column, and after them with each of the plan's drivers. */
  get chain(): Chain {
    return (this.#whole ??= new Chain(this.steps, [...INPUTS, ...this.plan.drivers]));
  }

  /** Places of the inputs that the number in this place can move with. */
  inputsOf(slot: number): readonly number[] {
    const { chain } = this;
    return (this.#inputs[slot] ??= INPUTS.filter((input) => chain.place(slot, input) >= 0));
  }

  /** How all numbers move with the one in this place, its only column. */
  chainOf(slot: number): Chain {
    return this.#chains.get(slot) ?? kept(this.#chains, slot, new Chain(this.steps, [slot]));
  }

  hanging(slot: number): Hanging {
    return this.#hanging.get(slot) ?? kept(this.#hanging, slot, this.#hangingOn(slot));
  }

  #hangingOn(slot: number): Hanging {
    const { steps } = this;
    const reached = new Set([slot]);
    const bends = new Set<number>();
    const following: number[] = [];
    for (let step = 0; step < steps.length; step++) {
      const own = steps.slotOf(step);
      const sources = steps.sourcesOf(step);
      if (own === slot || !sources.some((source) => reached.has(source))) continue;
      reached.add(own);
      following.push(step);
      if (!steps.isStraight(step) || sources.some((source) => bends.has(source))) bends.add(own);
    }
    const drawing = this.#drawing.filter(({ need, have }) => reached.has(need) || reached.has(have));
    const bent = drawing.filter(({ need, have }) => bends.has(need) || bends.has(have));
    const ways = new Map<CheckRule, readonly number[]>();
    return {
      to: (check) => ways.get(check) ?? kept(ways, check, this.#leadingTo([check], following)),
      straight: drawing.filter((rule) => !bent.includes(rule)),
      bent,
      toBent: this.#leadingTo(bent, following),
    };
  }

  /** Those of some steps on which the checks hang. */
  #leadingTo(checks: readonly CheckRule[], among: readonly number[]): readonly number[] {
    const wanted = new Set(checks.flatMap(({ need, have }) => [need, have]));
    return among
      .toReversed()
      .filter((step) => {
        if (!wanted.has(this.steps.slotOf(step))) return false;
        for (const source of this.steps.sourcesOf(step)) wanted.add(source);
        return true;
      })
      .reverse();
  }
}
