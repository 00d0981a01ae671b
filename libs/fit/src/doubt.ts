import type { BodyDimension } from '#body';
import { isMeasured } from '#measure';
import { type CheckRule, isSure, marginOf } from './check-rules.ts';
import type { FitRequest } from './fit-request.ts';
import type { WorkedOut } from './work-out.ts';

/**
 * The measure that was not taken of a body of which others were, and whose doubt alone is why a check that holds is not sure to;
 * null where there is none. `measured` is the uncertainty of the check's margin by what is known.
 */
export function doubtfulMeasure(
  rule: CheckRule,
  measured: number,
  { body }: FitRequest,
  { inputs, nudging, row, decisions }: WorkedOut,
): BodyDimension | null {
  if (body === null) return null;
  let doubtful: BodyDimension | null = null;
  let most = 0;
  let others = false;
  for (const { slot, u, body: name } of inputs.told) {
    if (name === null) continue;
    if (isMeasured(body.values[name]!.how)) {
      others = true;
      continue;
    }
    const share = (u * (nudging.slope(rule.have, slot) - nudging.slope(rule.need, slot))) ** 2;
    if (share > most) [doubtful, most] = [name, share];
  }
  const without = Math.sqrt(Math.max(measured ** 2 - most, 0));
  return others && isSure(marginOf(rule, row), rule, without, row, decisions) ? doubtful : null;
}
