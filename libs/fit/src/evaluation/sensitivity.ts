import type { BodyDimension } from '#body';
import type { DimensionName } from '../messages/advice.ts';
import { compute } from './compute.ts';
import type { FitRequest } from '../inputs/fit-request.ts';

/**
 * How the named dimensions of the assembled garment move with each measure of the body that enters, mm a mm: for the next
 * measure to take. A measure that a dimension does not depend on is not listed, nor any for a dimension the design does not have.
 * @returns one for each name, in order
 * @throws DomainError as `advise` does
 */
export function sensitivities(
  request: FitRequest,
  names: readonly DimensionName[],
): Readonly<Partial<Record<BodyDimension, number>>>[] {
  const { model, inputs, evaluation } = compute(request);
  return names.map((name) => {
    const rates: Partial<Record<BodyDimension, number>> = {};
    const quantity = model.assembled.find((planned) => planned.name === name)?.quantity;
    if (quantity === undefined) return rates;
    for (const dependency of evaluation.dependencies(quantity)) {
      const body = inputs.known[dependency.input]?.body;
      const rate = evaluation.byInput(dependency);
      if (body && rate !== 0) rates[body] = rate;
    }
    return rates;
  });
}
