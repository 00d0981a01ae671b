import type { BodyModelCoefficients } from '#body';
import { logMoments } from '../../../scripts/body-model/moments.ts';
import type { Sex } from '../../../scripts/body-model/names.ts';
import type { Person } from './people.ts';

/**
 * The model of one sex from one survey alone: that survey's mean and covariance, over the dimensions it has; what widens it for other people is taken from the
 * whole model, where two surveys tell it. (The other sex is left as it is.)
 */
export function oneSurveyModel(
  whole: BodyModelCoefficients,
  sex: Sex,
  people: readonly Person[],
): BodyModelCoefficients {
  const dimensions = whole.dimensions.filter((name) => people[0]!.mm[name] !== undefined);
  const columns = Object.fromEntries(dimensions.map((name) => [name, people.map(({ mm }) => mm[name]!)]));
  const { mean, covariance } = logMoments(columns, dimensions);
  const n = dimensions.length;
  const pick = (values: readonly number[]) => dimensions.map((name) => values[whole.dimensions.indexOf(name)]!);
  const own = whole[sex];
  return {
    ...whole,
    dimensions,
    [sex]: {
      ...own,
      logMean: [...mean],
      withinSurvey: dimensions.flatMap((_, i) => [...covariance.slice(i * n, i * n + i + 1)]),
      betweenSurveys: dimensions.map(() => 0),
      shiftSd: pick(own.shiftSd),
      lowest: pick(own.lowest),
      highest: pick(own.highest),
    },
  };
}

/** The same model that answers for everybody, also outside its range: for comparing errors person by person. */
export function withoutRange(model: BodyModelCoefficients, sex: Sex): BodyModelCoefficients {
  const { lowest, highest } = model[sex];
  return { ...model, [sex]: { ...model[sex], lowest: lowest.map(() => 0), highest: highest.map(() => Infinity) } };
}
