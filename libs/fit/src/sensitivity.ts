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
  const { plan, nudging } = workOut(request);
  return names.map((name) => {
    const slot = plan.assembled.find((planned) => planned.name === name)?.slot;
    const rates: Partial<Record<BodyDimension, number>> = {};
    for (const { input, moved } of nudging.columns) {
      const rate = slot === undefined ? 0 : moved.slope(slot);
      if (input.body !== null && rate !== 0) rates[input.body] = rate;
    }
    return rates;
  });
}
