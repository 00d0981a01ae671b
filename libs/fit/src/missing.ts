import type { BodyDimension, BodyMissing, BodyProfile } from '#body';
import type { NoAdvice } from './advice.ts';
import { NOWHERE } from './chain.ts';
import { BODY_INPUTS, type Inputs } from './inputs.ts';
import { NONE } from './messages/none.ts';
import type { Model } from './model.ts';
import { type InputName, type Row, S } from './slots.ts';

/** Some number for each measure, only to see what hangs on what; it reaches no sheet. mm, an adult's, scaled by κ. */
const STAND_INS: Readonly<Record<string, number>> = {
  chest: 940,
  hip: 990,
  upperArm: 280,
  wrist: 160,
  acrossBack: 404,
  nape: 743,
  scye: 184,
  neckBase: 371,
  head: 561,
  hand: 190,
  shoulderGirth: 1060,
  scyeGirth: 400,
  underarm: 432,
  backWaist: 437,
  backHip: 680,
  frontWaist: 450,
};

/** Finds, for a number that could not be worked out, the measures whose lack is the cause. */
export class MissingMeasures {
  readonly #model: Model;
  readonly #lacking: readonly (readonly [InputName, BodyDimension])[];
  readonly #inputs: Inputs;
  readonly #adult: Inputs;
  readonly #scale: number;
  readonly #body: BodyProfile | null;
  readonly #rows = new Map<InputName | null, Row>();

  /** `adult` is the same request taken at an adult's scale: a child's rules hang on the chest, and are not known without it. */
  constructor(model: Model, inputs: Inputs, adult: Inputs, kappa: number, body: BodyProfile | null) {
    this.#model = model;
    this.#inputs = inputs;
    this.#adult = adult;
    this.#scale = Number.isNaN(kappa) ? 1 : kappa;
    this.#body = body;
    this.#lacking = BODY_INPUTS.filter(([name]) => Number.isNaN(inputs.values[S[name]]!));
  }

  /** Why the number in this place has no value. */
  reasonFor(slot: number): NoAdvice {
    const { chain } = this.#model;
    const needs = this.#lacking
      .filter(
        ([name]) =>
          (chain.place(slot, S[name]) !== NOWHERE || name === 'chest') && Number.isNaN(this.#without(name)[slot]!),
      )
      .map(([, dimension]) => dimension);
    if (needs.length === 0 && !Number.isNaN(this.#without(null)[slot]!))
      return { code: 'garment-measure-missing', params: NONE, needs };
    if (needs.length === 0) return { code: 'no-shape-joins', params: NONE, needs };
    return { code: 'measure', params: { measures: needs, why: this.#whyMissing(needs) }, needs };
  }

  /** Every number with all measures there but this one; null for none. Without the chest a child's rules are not known either. */
  #without(lacking: InputName | null): Row {
    const before = this.#rows.get(lacking);
    if (before) return before;
    const filled = (lacking === 'chest' ? this.#inputs : this.#adult).values.slice();
    for (const [name] of this.#lacking) filled[S[name]] = name === lacking ? NaN : STAND_INS[name]! * this.#scale;
    const row = this.#model.steps.workOut(filled);
    this.#rows.set(lacking, row);
    return row;
  }

  /** Why the body does not have the first of them of which that is known. */
  #whyMissing(needs: readonly BodyDimension[]): BodyMissing | null {
    return needs.map((name) => this.#body?.missing[name]).find((reason) => reason) ?? null;
  }
}
