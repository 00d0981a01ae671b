import type { Quantity } from '#measure';
import type { Situation, TracedCheck } from '../checks/check.ts';
import type { Evaluation } from '../engine/index.ts';
import { INPUTS } from '../model/inputs.ts';

/** The two choices that make a garment wider: its ease, and more than the garment that fits has. */
export const EASES = [INPUTS.chosenEase, INPUTS.easeChange] as const;

/** So much more or less ease is tried, mm. */
export const EASE_STEP = 5;

/** Which way of its ease makes a check's margin larger, and whose ease that is; null where neither does, as where a limit is reached. */
export function easeThatHelps({ margin }: TracedCheck, evaluation: Evaluation): Situation['ease'] {
  for (const ease of EASES) {
    const rate = evaluation.derivative(margin, ease);
    if (Math.abs(rate) > 0 && helps(ease, Math.sign(rate) * EASE_STEP, margin, evaluation))
      return { way: rate > 0 ? 'more' : 'less', ofGarment: ease === INPUTS.easeChange };
  }
  return null;
}

/** Whether an input moved by so many mm makes a margin larger. */
function helps(input: Quantity, by: number, margin: Quantity, evaluation: Evaluation): boolean {
  const perturbation = evaluation.perturbation(input, evaluation.layout.path(input, margin));
  return perturbation.by(by).value(margin) > evaluation.value(margin) + 1e-6;
}
