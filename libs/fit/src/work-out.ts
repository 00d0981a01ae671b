import { decide } from './decide.ts';
import type { Decisions } from './decisions.ts';
import { planOf, type Plan } from './dimension-plan.ts';
import type { FitRequest } from './fit-request.ts';
import { type Inputs, inputsOf } from './inputs.ts';
import { readMade } from './made.ts';
import { modelOf } from './model.ts';
import { Nudging } from './nudging.ts';
import { kappaOf, rulesAtSize } from './scale.ts';
import type { Steps } from './steps.ts';

/** A request worked out: what goes in, what was decided, and every number with how it moves. */
export interface WorkedOut {
  /** κ of the model; NaN for a child whose chest is not known. */
  readonly kappa: number;
  readonly inputs: Inputs;
  readonly decisions: Decisions;
  readonly steps: Steps;
  readonly plan: Plan;
  readonly nudging: Nudging;
}

export function workOut(request: FitRequest): WorkedOut {
  const kappa = kappaOf(request.body, request.rules);
  const { inputs, decisions } = settle(request, kappa);
  const steps = modelOf(decisions);
  const plan = planOf(decisions);
  const nudging = new Nudging(steps, inputs, plan.drivers, request.body?.covariance ?? null);
  return { kappa, inputs, decisions, steps, plan, nudging };
}

/** Inputs and decisions; a squared drop that turns out to have no inset is settled again as a drop shoulder. */
export function settle(request: FitRequest, kappa: number): { inputs: Inputs; decisions: Decisions } {
  const { design } = request;
  const sized = rulesAtSize(request.rules, kappa);
  const frontBand = design.frontBandMm ?? sized['front-band-width'];
  const made = readMade(request.made, design, frontBand, design.overlapMm ?? frontBand);
  const inputs = inputsOf(request, sized, made.inputs);
  const decisions = decide(request, inputs, kappa, sized, made);
  if (decisions.construction === design.construction) return { inputs, decisions };
  return settle({ ...request, design: { ...design, construction: decisions.construction } }, kappa);
}
