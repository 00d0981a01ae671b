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
 * Evaluates a garment, and again where the numbers change a choice: whether the body comes down to the hip, whether it fits
 * closely, whether it tapers, whether a squared drop has an inset at all (else it is a drop shoulder), and how its neck opens.
 */
export function evaluateChoices(requested: Choices, numbers: Numbers): Evaluated {
  const { values, wearer } = numbers;
  const first = evaluated(requested, numbers);
  const { garment } = first.model;
  const hipReached = hipIsReached(garment, first.evaluation.value, values, wearer);
  const closeFitting = first.evaluation.value(garment.girths.ease) < wearer.sized['close-ease'];
  const stays = hipReached === requested.hipReached && closeFitting === requested.closeFitting;
  const second = stays ? first : evaluated({ ...requested, hipReached, closeFitting }, numbers);
  const third = tapersByItself(second) ? evaluated({ ...second.choices, hem: 'tapered' }, numbers) : second;
  const fourth = hasInset(third, wearer)
    ? third
    : evaluated({ ...third.choices, construction: 'drop-shoulder' }, numbers);
  return resolveOpening(fourth, (choices) => evaluated(choices, numbers));
}

/** Whether a hem of which nothing was said tapers: the hip asks for more than the chest that is kept, which stays the garment's. */
function tapersByItself(garment: Evaluated): boolean {
  const { hemIsFree, kept, made } = garment.choices;
  return hemIsFree && kept.chest && !made.back && !made.front && hipGoverns(garment);
}

/** Whether a straight hem is as wide as the hip, and with it the whole body, because the hip asks for more than the chest. */
export function hipGoverns({ choices, model, evaluation }: Evaluated): boolean {
  const { girths } = model.garment;
  if (choices.hem !== 'straight' || !choices.hipReached) return false;
  return evaluation.value(girths.hipFlat) > evaluation.value(girths.chestFlat) + 1e-9;
}
