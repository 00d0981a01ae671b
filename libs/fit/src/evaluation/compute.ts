import type { FitRequest } from '../inputs/fit-request.ts';
import { evaluateChoices, type Numbers } from './evaluate-choices.ts';
import type { Evaluated } from './evaluated.ts';
import type { InputUncertainty } from '../engine/index.ts';
import type { Wearer } from '../inputs/hip-reached.ts';
import { inputsOf, type Inputs } from '../inputs/inputs.ts';
import { readMade } from '../inputs/made.ts';
import { requestedChoices } from '../inputs/resolve-choices.ts';
import { kappaOf, rulesAtSize } from '../design/scale.ts';

/** A request computed: what goes in, the choices it leads to, the model for them, and every number. */
export interface Computed extends Evaluated {
  readonly request: FitRequest;
  readonly inputs: Inputs;
  readonly numbers: Numbers;
  readonly wearer: Wearer;
  /** κ; NaN for a child whose chest is not known. */
  readonly kappa: number;
}

/** @throws DomainError as `advise` does */
export function compute(request: FitRequest): Computed {
  return computeAtSize(request, kappaOf(request.body, request.rules));
}

/** A squared drop that turns out to have no inset is computed again as a drop shoulder, with a drop shoulder's rules. */
function computeAtSize(request: FitRequest, kappa: number): Computed {
  const { inputs, choices, wearer } = inputsAtSize(request, kappa);
  const numbers = { values: inputs.values, uncertainty: uncertaintyOf(inputs, request), wearer };
  const evaluated = evaluateChoices(choices, numbers);
  const { construction } = evaluated.choices;
  if (construction !== request.design.construction)
    return { ...computeAtSize({ ...request, design: { ...request.design, construction } }, kappa), request };
  return { ...evaluated, request, inputs, numbers, wearer, kappa };
}

/** What goes into the model for a wearer of this size. */
export function inputsAtSize(request: FitRequest, kappa: number) {
  const { design, body } = request;
  const sized = rulesAtSize(request.rules, kappa);
  const frontBand = design.frontBandMm ?? sized['front-band-width'];
  const { made, inputs: madeInputs } = readMade(request.made, design, frontBand, design.overlapMm ?? frontBand);
  const inputs = inputsOf(request, sized, madeInputs);
  const wearer = { figure: body?.figure ?? null, sized };
  return { inputs, choices: requestedChoices(request, made, inputs.values, wearer), wearer };
}

/** The inputs' uncertainties by their places, with the covariance of those that were estimated together. */
function uncertaintyOf({ known }: Inputs, { body, garment }: FitRequest): InputUncertainty {
  const { names = [], matrix = [] } = body?.covariance ?? {};
  const easeRow = names.map((name) => garment?.ease.covariances[name] ?? 0);
  return {
    u: known.map((input) => input?.u ?? 0),
    row: known.map((input) => {
      if (!input || input.u === 0) return -1;
      if (input.name === 'garmentEase') return names.length;
      return input.body === null ? -1 : names.indexOf(input.body);
    }),
    covariance: garment
      ? [...matrix.map((row, i) => [...row, easeRow[i]!]), [...easeRow, garment.ease.u ** 2]]
      : matrix,
  };
}
