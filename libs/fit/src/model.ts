import type { DimensionName } from './advice.ts';
import { armholeSteps, bodySteps, widthSteps } from './body-shape.ts';
import { Chain, NOWHERE } from './chain.ts';
import { CHECK_RULES, type CheckRule, isComfort } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import { type Plan, planOf } from './dimension-plan.ts';
import { girthSteps } from './girths.ts';
import { lengthSteps } from './lengths.ts';
import { neckSteps } from './neck.ts';
import type { Rules } from './rules.ts';
import { sleeveSteps } from './sleeve-shape.ts';
import { INPUT_COUNT, UNCERTAIN, unknownRow } from './slots.ts';
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
  return `${d.silhouette} ${d.construction} ${d.neckline} ${d.hem} ${d.lengthFrom} ${d.refConstruction} ${flags(d.taken)} ${flags(d.made)} ${d.easeFromGarment} ${d.ownNeckWidth} ${d.ownFrontNeck} ${d.ownBackNeck} ${d.length === 'custom'} ${d.hipReached} ${d.hipGoverns} ${d.layerArm} ${d.layerWrist} ${d.refLayerArm} ${d.refLayerWrist} ${d.sleeveFromCentreBack} ${d.refWidthGiven} ${d.ribUsable} ${d.mainUsable} ${d.mainMeasured} ${d.closeFitting}`;
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
  /** Of the checks that do and that may draw it in, those whose margin moves in proportion with it, and the others, with the steps that lead to them. */
  readonly straight: readonly CheckRule[];
  readonly bent: readonly CheckRule[];
  readonly toBent: readonly number[];
}

/** Inputs that a number moves with, where among the rates it is told how, and what was said of each last. */
export interface Movers {
  readonly inputs: readonly number[];
  readonly places: readonly number[];
  readonly said: (Said | undefined)[];
}

/** A text, and all that it hangs on: the words it is about, and two whole numbers. One sheet after the other says the same. */
export interface Said {
  readonly about: string;
  readonly first: number;
  readonly second: number;
  readonly text: string;
}

/** The uncertain inputs of a difference, with the places of what is taken off; `NOWHERE` where it does not move. */
export interface Doubts extends Omit<Movers, 'said'> {
  readonly minus: readonly number[];
}

/** Where it is told how all numbers move with one of them, and which dimensions are rounded with it. */
export interface Column {
  readonly chain: Chain;
  readonly at: number;
  readonly followers: readonly Follower[];
}

/** A dimension that moves with another, and where among the rates it is told how. */
export interface Follower {
  readonly name: DimensionName;
  readonly slot: number;
  readonly place: number;
}

/**
 * The whole model for what was decided: from measures, choices and rules to every finished measurement and every check's
 * need and have. An input that is not known is NaN, and so is all that needs it. What follows from the decisions alone is
 * laid out once: what a sheet tells, what moves with what, what hangs on what.
 */
export class Model {
  readonly steps: Steps;
  readonly plan: Plan;
  readonly #columns = new Map<number, Column>();
  readonly #hanging = new Map<number, Hanging>();
  /** Checks that may apply, and that draw a rounding in. */
  readonly #drawing: readonly CheckRule[];
  #whole: Chain | undefined;
  readonly #movers: Movers[] = [];
  readonly #doubts: Map<number, Doubts>[] = [];

  constructor(d: Decisions) {
    this.steps = stepsOf(d);
    this.plan = planOf(d);
    this.#drawing = CHECK_RULES.filter((rule) => !isComfort(rule, d) && rule.applies(d, unknownRow()));
  }

  /** How all numbers move with each input, in its place as a column, and after them with each of the plan's drivers. */
  get chain(): Chain {
    return (this.#whole ??= new Chain(this.steps, [...INPUTS, ...this.plan.drivers]));
  }

  /** What the number in this place can move with. */
  moversOf(slot: number): Movers {
    return (this.#movers[slot] ??= this.#moversOf(slot));
  }

  /** What the difference of two numbers, or one alone (`minus` −1), can be uncertain by. */
  doubtsOf(plus: number, minus: number): Doubts {
    const ofPlus = (this.#doubts[plus] ??= new Map());
    return ofPlus.get(minus) ?? kept(ofPlus, minus, this.#doubtsOf(plus, minus));
  }

  /** How all numbers move with the one in this place. */
  columnOf(slot: number): Column {
    return this.#columns.get(slot) ?? kept(this.#columns, slot, this.#columnOf(slot));
  }

  hanging(slot: number): Hanging {
    return this.#hanging.get(slot) ?? kept(this.#hanging, slot, this.#hangingOn(slot));
  }

  #moversOf(slot: number): Movers {
    const { chain } = this;
    const inputs = INPUTS.filter((input) => chain.place(slot, input) !== NOWHERE);
    return { inputs, places: inputs.map((input) => chain.place(slot, input)), said: inputs.map(() => undefined) };
  }

  #doubtsOf(plus: number, minus: number): Doubts {
    const { chain } = this;
    const place = (slot: number, input: number): number => (slot < 0 ? NOWHERE : chain.place(slot, input));
    const moves = (input: number): boolean => place(plus, input) !== NOWHERE || place(minus, input) !== NOWHERE;
    const inputs = INPUTS.filter((input) => UNCERTAIN.has(input) && moves(input));
    return {
      inputs,
      places: inputs.map((input) => place(plus, input)),
      minus: inputs.map((input) => place(minus, input)),
    };
  }

  #columnOf(slot: number): Column {
    const driver = this.plan.drivers.indexOf(slot);
    const own = slot >= INPUT_COUNT && driver < 0;
    const chain = own ? new Chain(this.steps, [slot]) : this.chain;
    const at = own ? 0 : slot < INPUT_COUNT ? slot : INPUT_COUNT + driver;
    const followers = this.plan.names
      .map(({ name, slot: its }) => ({ name, slot: its, place: chain.place(its, at) }))
      .filter(({ place }) => place !== NOWHERE);
    return { chain, at, followers };
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
