import type { Quantity } from '#measure';
import type { Jacobian } from './jacobian.ts';
import type { Constrained, Dependency, Layout } from './layout.ts';
import { Perturbation } from './perturbation.ts';
import type { Values } from './laid-out.ts';

/** Standard uncertainties of the inputs by their places, and for correlated ones which row of the covariance is theirs (else −1). */
export interface InputUncertainty {
  readonly u: readonly number[];
  readonly row: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** A derivative below this is what rounding leaves of none: of a metre it makes a hundredth of a micrometre. */
const NO_DERIVATIVE = 1e-8;

/** A model evaluated for the inputs of one request: values, derivatives, uncertainties. */
export class Evaluation {
  readonly layout: Layout;
  readonly #values: Values;
  readonly #input: InputUncertainty;
  #partials: readonly number[] | undefined;
  readonly #derivatives = new Map<Jacobian, readonly number[]>();

  constructor(layout: Layout, inputs: readonly number[], input: InputUncertainty) {
    this.layout = layout;
    this.#values = layout.tape.evaluate(inputs);
    this.#input = input;
  }

  /** NaN where it is not known. */
  readonly value = (of: Quantity): number => this.#values[this.layout.tape.place(of)]!;

  /** How a quantity moves with another, mm a mm. */
  derivative(of: Quantity, by: Quantity): number {
    const { jacobian, at } = this.layout.column(by);
    return this.#derivativeAt(jacobian, jacobian.place(this.layout.tape.place(of), at));
  }

  /** The inputs that a quantity may depend on. */
  dependencies(of: Quantity): readonly Dependency[] {
    return this.layout.dependencies(of);
  }

  /** How a quantity moves with an input that it depends on. */
  byInput({ derivative }: Dependency): number {
    return this.#derivativeAt(this.layout.planned, derivative);
  }

  /** How a quantity that is worked out from a sheet that is made moves with an input: the sheet's numbers are fixed. */
  judgedDerivative(of: Quantity, input: number): number {
    const { judged, tape } = this.layout;
    return this.#derivativeAt(judged, judged.place(tape.place(of), input));
  }

  /** How the outputs move with a quantity, mm a mm; those that are not known, or do not move, left out. */
  followers(by: Quantity): { readonly output: number; readonly rate: number }[] {
    const { jacobian } = this.layout.column(by);
    const moving: { readonly output: number; readonly rate: number }[] = [];
    for (const { output, place, derivative } of this.layout.followers(by)) {
      const rate = this.#derivativeAt(jacobian, derivative);
      if (rate !== 0 && !Number.isNaN(this.#values[place]!)) moving.push({ output, rate });
    }
    return moving;
  }

  constrained(by: Quantity): Constrained {
    return this.layout.constrained(by);
  }

  /** A quantity to be moved, with the places that follow. */
  perturbation(of: Quantity, path: readonly number[]): Perturbation {
    const { tape } = this.layout;
    return new Perturbation(tape, this.#values, [{ place: tape.place(of), rate: 1 }], path);
  }

  /** A quantity of the sheet to be rounded: what follows it moves in proportion, and what depends on the sheet is worked out again. */
  rounding(by: Quantity, { moving, path }: Constrained): Perturbation {
    const { jacobian } = this.layout.column(by);
    const moves = moving
      .map(({ place, derivative }) => ({ place, rate: this.#derivativeAt(jacobian, derivative) }))
      .filter(({ rate }) => rate !== 0 && !Number.isNaN(rate));
    return new Perturbation(this.layout.tape, this.#values, moves, path);
  }

  /**
   * Standard uncertainty of a quantity of the plan by the law of propagation, with correlation.
   * Source: JCGM 100:2008 (GUM), equation 13.
   */
  uncertainty(of: Quantity): number {
    return this.#propagate(this.layout.planned, this.layout.dependencies(of));
  }

  /** The same of one that is worked out from a sheet that is made. */
  judgedUncertainty(of: Quantity): number {
    return this.#propagate(this.layout.judged, this.layout.judgedDependencies(of));
  }

  #propagate(jacobian: Jacobian, dependencies: readonly Dependency[]): number {
    const { u, row, covariance } = this.#input;
    const rows: number[] = [];
    const derivatives: number[] = [];
    let variance = 0;
    for (const dependency of dependencies) {
      const { input } = dependency;
      if (u[input] === 0) continue;
      const derivative = this.#derivativeAt(jacobian, dependency.derivative);
      if (derivative === 0) continue;
      variance += (derivative * u[input]!) ** 2;
      if (row[input]! < 0) continue;
      const covariances = covariance[row[input]!]!;
      for (let k = 0; k < rows.length; k++) variance += 2 * derivative * derivatives[k]! * covariances[rows[k]!]!;
      rows.push(row[input]!);
      derivatives.push(derivative);
    }
    return Math.sqrt(Math.max(variance, 0));
  }

  #derivativeAt(jacobian: Jacobian, place: number): number {
    const derivative = this.#derivativesOf(jacobian)[place]!;
    return Math.abs(derivative) < NO_DERIVATIVE ? 0 : derivative;
  }

  #derivativesOf(jacobian: Jacobian): readonly number[] {
    const before = this.#derivatives.get(jacobian);
    if (before) return before;
    const all = this.#differentiate(jacobian);
    this.#derivatives.set(jacobian, all);
    return all;
  }

  #differentiate(jacobian: Jacobian): readonly number[] {
    this.#partials ??= this.layout.tape.partials(this.#values);
    return jacobian.evaluate(this.#partials);
  }
}
