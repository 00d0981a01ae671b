import type { BodyDimension } from '#body';
import { isMeasured } from '#measure';
import type { Computed } from '../evaluation/compute.ts';
import { AT } from '../model/inputs.ts';
import type { TracedCheck } from '../checks/check.ts';
import { isSure, marginOf } from '../checks/judge.ts';

/**
 * The measure that was not taken, of a body of which others were, and whose uncertainty alone is why a check that holds is not sure to;
 * null where there is none. `measured` is the uncertainty of the check's margin by what is known.
 */
export function uncertainMeasure(
  check: TracedCheck,
  measured: number,
  { request: { body }, inputs, evaluation, choices }: Computed,
): BodyDimension | null {
  if (body === null) return null;
  let uncertain: BodyDimension | null = null;
  let most = 0;
  let others = false;
  for (const input of inputs.known) {
    if (!input || input.body === null) continue;
    if (isMeasured(body.values[input.body]!.how)) {
      others = true;
      continue;
    }
    const share = (input.u * evaluation.judgedDerivative(check.margin, AT[input.name])) ** 2;
    if (share > most) [uncertain, most] = [input.body, share];
  }
  const v = evaluation.value;
  const without = Math.sqrt(Math.max(measured ** 2 - most, 0));
  return others && isSure(marginOf(check, v), check, without, v, choices) ? uncertain : null;
}
