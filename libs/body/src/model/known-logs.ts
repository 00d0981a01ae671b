import type { BodyDimension } from '../body-dimension.ts';
import { bodyError } from '../body-errors.ts';
import type { KnownValue } from '../estimator.ts';

/** Known values as the model takes them: places in its dimensions, natural logarithms, and error variances of those. */
export interface KnownLogs {
  readonly at: readonly number[];
  readonly logs: readonly number[];
  readonly noise: readonly number[];
}

/** No tape or scale reads finer than this, mm or g; it keeps a value said to be exact from making the algebra singular. */
const FINEST = { length: 0.5, weight: 50 };

/**
 * @throws DomainError `not-a-measure` for a value that is not above 0, `measured-twice`, `unknown-dimension`; the pointer names the entry.
 */
export function knownLogs(dimensions: readonly BodyDimension[], known: readonly KnownValue[]): KnownLogs {
  const at = known.map(({ name }, index) => {
    const place = dimensions.indexOf(name);
    if (place === -1)
      throw bodyError('unknown-dimension', { of: 'body-model', name, known: dimensions }, `/known/${index}/name`);
    return place;
  });
  known.forEach(({ name, value, u }, index) => {
    if (at.indexOf(at[index]!) < index) {
      throw bodyError('measured-twice', { name }, `/known/${index}/name`);
    }
    if (!(value > 0 && value < Infinity && u >= 0 && u < Infinity)) {
      throw bodyError('not-a-measure', { name, value, u }, `/known/${index}/value`);
    }
  });
  return {
    at,
    logs: known.map(({ value }) => Math.log(value)),
    noise: known.map(
      ({ name, value, u }) => (Math.max(u, name === 'weight' ? FINEST.weight : FINEST.length) / value) ** 2,
    ),
  };
}
