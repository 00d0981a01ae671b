import type { BodyDimension, BodyProfile } from '#body';
import type { NoAdvice } from './advice.ts';
import { BODY_INPUTS, type Inputs } from './inputs.ts';
import { type Row, S } from './slots.ts';
import type { Steps } from './steps.ts';

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
  readonly #rows: readonly { readonly dimension: BodyDimension; readonly without: Row }[];
  readonly #complete: Row;
  readonly #body: BodyProfile | null;

  /** `adult` is the same request taken at an adult's scale: a child's rules hang on the chest, and are not known without it. */
  constructor(steps: Steps, inputs: Inputs, adult: Inputs, kappa: number, body: BodyProfile | null) {
    this.#body = body;
    const lacking = BODY_INPUTS.filter(([name]) => Number.isNaN(inputs.values[S[name]]!));
    const scale = Number.isNaN(kappa) ? 1 : kappa;
    const filled = ({ values }: Inputs): Row => {
      const all = values.slice();
      for (const [name] of lacking) all[S[name]] = STAND_INS[name]! * scale;
      return all;
    };
    this.#complete = steps.workOut(filled(adult));
    this.#rows = lacking.map(([name, dimension]) => {
      const without = filled(name === 'chest' ? inputs : adult);
      without[S[name]] = NaN;
      return { dimension, without: steps.workOut(without) };
    });
  }

  /** Why the number in this place has no value. */
  reasonFor(slot: number): NoAdvice {
    const needs = this.#rows.filter(({ without }) => Number.isNaN(without[slot]!)).map(({ dimension }) => dimension);
    if (needs.length === 0 && !Number.isNaN(this.#complete[slot]!))
      return { needs, reason: 'A measure of the garment that fits is missing.' };
    if (needs.length === 0)
      return { needs, reason: 'No shape joins these edges; choose another construction or ease.' };
    return { needs, reason: this.#sentence(needs) };
  }

  #sentence(needs: readonly BodyDimension[]): string {
    const why = needs.map((name) => this.#body?.missing[name]).find((reason) => reason);
    const names = needs.map((name) => name.replaceAll('-', ' ')).join(', ');
    return `Take ${names}.${why ? ` ${why}` : ''}`;
  }
}
