import { holdingChecks } from './check-rules.ts';
import { decide } from './decide.ts';
import { type Figure, figuresOf } from './figures.ts';
import type { FitRequest } from './fit-request.ts';
import type { Decided } from './governed.ts';
import { type Inputs, inputsOf } from './inputs.ts';
import { readMade } from './made.ts';
import { Nudging } from './nudging.ts';
import { kappaOf, rulesAtSize } from './scale.ts';

/** A request settled: what goes in, what was decided, the model for it, and every number. */
export interface Settled extends Decided {
  readonly inputs: Inputs;
}

/** A request worked out: besides every number, how it moves, how sure it is and how far it may be rounded. */
export interface WorkedOut extends Settled {
  /** κ of the model; NaN for a child whose chest is not known. */
  readonly kappa: number;
  readonly nudging: Nudging;
  /** By their places in the row. */
  readonly figures: readonly (Figure | undefined)[];
}

export function workOut(request: FitRequest): WorkedOut {
  const kappa = kappaOf(request.body, request.rules);
  const { inputs, decisions, model, row } = settle(request, kappa);
  const nudging = new Nudging(model, row, inputs, request.body?.covariance ?? null);
  const holding = holdingChecks(row, decisions);
  const figures = figuresOf(request, model.plan.numbers, nudging, decisions, holding);
  return { kappa, inputs, decisions, model, row, nudging, figures };
}

/** Inputs and decisions; a squared drop that turns out to have no inset is settled again as a drop shoulder. */
export function settle(request: FitRequest, kappa: number): Settled {
  const { design } = request;
  const sized = rulesAtSize(request.rules, kappa);
  const frontBand = design.frontBandMm ?? sized['front-band-width'];
  const made = readMade(request.made, design, frontBand, design.overlapMm ?? frontBand);
  const inputs = inputsOf(request, sized, made.inputs);
  const { decisions, model, row } = decide(request, inputs.values, kappa, sized, made.made);
  const { construction } = decisions;
  if (construction === design.construction) return { inputs, decisions, model, row };
  return settle({ ...request, design: { ...design, construction } }, kappa);
}
