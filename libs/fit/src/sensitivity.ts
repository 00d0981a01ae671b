import type { BodyDimension } from '#body';
import type { DimensionName } from './advice.ts';
import type { FitRequest } from './fit-request.ts';
import { workOut } from './work-out.ts';

/**
 * How the named dimensions of the assembled garment move with each measure of the body that enters, mm a mm: for the next
 * measure to take. A measure that a dimension does not hang on is not listed, nor any for a dimension the design does not have.
 * @returns one for each name, in order
 * @throws DomainError as `advise` does
 */
export function sensitivities(
  request: FitRequest,
  names: readonly DimensionName[],
): Readonly<Partial<Record<BodyDimension, number>>>[] {
  const { model, nudging } = workOut(request);
  return names.map((name) => {
    const rates: Partial<Record<BodyDimension, number>> = {};
    const slot = model.plan.assembled.find((planned) => planned.name === name)?.slot;
    if (slot === undefined) return rates;
    for (const input of nudging.moversOf(slot).inputs) {
      const body = nudging.told(input)?.body;
      const rate = nudging.slope(slot, input);
      if (body && rate !== 0) rates[body] = rate;
    }
    return rates;
  });
}
