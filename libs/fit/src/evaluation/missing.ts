import type { BodyDimension, BodyMissing, BodyProfile } from '#body';
import type { Quantity } from '#measure';
import type { NoAdvice } from '../messages/advice.ts';
import { type Computed, inputsAtSize } from './compute.ts';
import { BODY_INPUTS } from '../inputs/inputs.ts';
import { NONE } from '../messages/none.ts';
import { AT, INPUT_NAMES, type InputName, type InputValues } from '../model/inputs.ts';

/** Some number for each measure, only to see what depends on what; it reaches no sheet. mm, an adult's, scaled by κ. */
const STAND_INS: Readonly<Partial<Record<InputName, number>>> = {
  chest: 940,
  hip: 990,
  upperArm: 280,
  wrist: 160,
  acrossBack: 404,
  napeToCuff: 743,
  scyeDepth: 184,
  neckBase: 371,
  head: 561,
  hand: 190,
  shoulderGirth: 1060,
  scyeGirth: 400,
  underarmLength: 432,
  backWaist: 437,
  backHip: 680,
  frontWaist: 450,
};

/** Finds, for a number that is not known, the measures whose lack is the cause. */
export class MissingMeasures {
  readonly #computed: Computed;
  readonly #lacking: readonly (readonly [InputName, BodyDimension])[];
  /** The same request at an adult's scale: a child's rules depend on the chest, and are not known without it. */
  readonly #adult: InputValues;
  readonly #body: BodyProfile | null;
  readonly #values = new Map<InputName | null, (of: Quantity) => number>();

  constructor(computed: Computed) {
    const { request, kappa, inputs, choices } = computed;
    const asked = { ...request, design: { ...request.design, construction: choices.construction } };
    this.#computed = computed;
    this.#adult = Number.isNaN(kappa) ? inputsAtSize(asked, 1).inputs.values : inputs.values;
    this.#body = request.body;
    this.#lacking = BODY_INPUTS.filter(([name]) => Number.isNaN(inputs.values[AT[name]]!));
  }

  /** Why a quantity has no value. */
  reasonFor(of: Quantity): NoAdvice {
    const { evaluation } = this.#computed;
    const depends = new Set(evaluation.dependencies(of).map(({ input }) => INPUT_NAMES[input]!));
    const needs = this.#lacking
      .filter(([name]) => (depends.has(name) || name === 'chest') && Number.isNaN(this.#without(name)(of)))
      .map(([, dimension]) => dimension);
    if (needs.length > 0) return { code: 'measure', params: { measures: needs, why: this.#whyMissing(needs) }, needs };
    if (Number.isNaN(this.#without(null)(of))) return { code: 'no-shape-joins', params: NONE, needs };
    return { code: 'garment-measure-missing', params: NONE, needs };
  }

  /** The values with all measures there but this one; null for none. Without the chest a child's rules are not known either. */
  #without(lacking: InputName | null): (of: Quantity) => number {
    const before = this.#values.get(lacking);
    if (before) return before;
    const { inputs, kappa, evaluation } = this.#computed;
    const scale = Number.isNaN(kappa) ? 1 : kappa;
    const values = (lacking === 'chest' ? inputs.values : this.#adult).slice();
    for (const [name] of this.#lacking) values[AT[name]] = name === lacking ? NaN : STAND_INS[name]! * scale;
    const { tape } = evaluation.layout;
    const all = tape.evaluate(values);
    const value = (of: Quantity): number => all[tape.place(of)]!;
    this.#values.set(lacking, value);
    return value;
  }

  /** Why the body does not have the first of them of which that is known. */
  #whyMissing(needs: readonly BodyDimension[]): BodyMissing | null {
    return needs.map((name) => this.#body?.missing[name]).find((reason) => reason) ?? null;
  }
}
