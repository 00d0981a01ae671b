import type { Choices } from '../design/choices.ts';
import { Evaluation, type InputUncertainty } from '../engine/index.ts';
import { hipIsReached, type Wearer } from '../inputs/hip-reached.ts';
import type { Evaluated } from './evaluated.ts';
import { resolveOpening } from './resolve-opening.ts';
import type { InputValues } from '../model/inputs.ts';
import { tracedModel } from '../tracing/traced-model.ts';

/** What a model is evaluated for. */
export interface Numbers {
  readonly values: InputValues;
  readonly uncertainty: InputUncertainty;
  readonly wearer: Wearer;
}

/** Evaluates a garment for choices as they are. */
export function evaluated(choices: Choices, { values, uncertainty }: Numbers): Evaluated {
  const model = tracedModel(choices);
  return { choices, model, evaluation: new Evaluation(model.layout, values, uncertainty) };
}

/** What a squared drop goes in on each side is enough to make one. */
export function hasInset({ model, evaluation }: Evaluated, { sized }: Wearer): boolean {
  const { insetAsked } = model.garment.widths;
  if (insetAsked === undefined) return true;
  return !(Math.min(evaluation.value(insetAsked), sized['squared-inset-most']) < sized['squared-inset-least']);
}

/**
 * Evaluates a garment, and again where the numbers change a choice: whether it fits closely, whether it tapers, whether a squared drop has
 * an inset at all (else it is a drop shoulder), how its neck opens, and whether a body that is as long as it was made comes down to the hip.
 */
export function evaluateChoices(requested: Choices, numbers: Numbers): Evaluated {
  const asAsked = evaluateToHip(requested, numbers);
  const { model, evaluation } = asAsked;
  const hipReached = hipIsReached(model.garment, evaluation.value, numbers.values, numbers.wearer);
  return hipReached === requested.hipReached ? asAsked : evaluateToHip({ ...requested, hipReached }, numbers);
}

function evaluateToHip(requested: Choices, numbers: Numbers): Evaluated {
  const { sized } = numbers.wearer;
  const again = (choices: Choices): Evaluated => evaluated(choices, numbers);
  const first = again(requested);
  const closeFitting = first.evaluation.value(first.model.garment.girths.ease) < sized['close-ease'];
  const fitting = closeFitting === requested.closeFitting ? first : again({ ...requested, closeFitting });
  const tapered = tapersByItself(fitting) ? again({ ...fitting.choices, hem: 'tapered' }) : fitting;
  const inset = hasInset(tapered, numbers.wearer)
    ? tapered
    : again({ ...tapered.choices, construction: 'drop-shoulder' });
  return resolveOpening(inset, again);
}

/** Whether a hem of which nothing was said tapers: the hip asks for more than the chest that is kept, which stays the garment's. */
function tapersByItself(garment: Evaluated): boolean {
  const { hemIsFree, kept } = garment.choices;
  return hemIsFree && kept.chest && hipGoverns(garment);
}

/** Whether a straight hem is as wide as the hip, and with it the whole body, because the hip asks for more than the chest. */
export function hipGoverns({ choices, model, evaluation }: Evaluated): boolean {
  const { girths } = model.garment;
  if (choices.hem !== 'straight' || !choices.hipReached) return false;
  return evaluation.value(girths.hipFlat) > evaluation.value(girths.chestFlat) + 1e-9;
}
