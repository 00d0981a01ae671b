import { bodySize, condition, type BodyModelCoefficients } from '#body';
import { logMoments } from '../../../scripts/body-model/moments.ts';
import type { Sex } from '../../../scripts/body-model/names.ts';
import type { Person } from './people.ts';

/**
 * The model of one sex from one survey alone: that survey's mean and covariance, over the dimensions it has, each dimension following stature and weight with a
 * residual of its own. `widened`: with what the whole model adds for other people, where two surveys tell it. (The other sex is left as it is.)
 */
export function oneSurveyModel(
  whole: BodyModelCoefficients,
  sex: Sex,
  people: readonly Person[],
  { widened }: { readonly widened: boolean },
): BodyModelCoefficients {
  const dimensions = whole.dimensions.filter((name) => people[0]!.mm[name] !== undefined);
  const columns = Object.fromEntries(dimensions.map((name) => [name, people.map(({ mm }) => mm[name]!)]));
  const { mean, covariance } = logMoments(columns, dimensions);
  const n = dimensions.length;
  const [s, w] = [dimensions.indexOf('stature'), dimensions.indexOf('weight')];
  const size = bodySize(Math.exp(mean[s]!), Math.exp(mean[w]!));
  const cell = (i: number, j: number) => covariance[i * n + j]!;
  // b = ln weight − 2h − a constant
  const spread = [cell(s, s), cell(s, w) - 2 * cell(s, s), cell(w, w) - 4 * cell(s, w) + 4 * cell(s, s)] as const;
  const given = condition({ n, mean, covariance }, [s, w], [0, 0], [0, 0]);
  const place = (i: number) => given.rest.indexOf(i);
  const slopes = dimensions.map((_, i) => {
    if (i === s) return { stature: 1, bmi: 0 };
    if (i === w) return { stature: 2, bmi: 1 };
    const [onStature, onWeight] = [given.gain[2 * place(i)]!, given.gain[2 * place(i) + 1]!];
    return { stature: onStature + 2 * onWeight, bmi: onWeight };
  });
  const residual = (i: number, j: number) =>
    place(i) === -1 || place(j) === -1 ? 0 : given.covariance[place(i) * given.rest.length + place(j)]!;
  const none = dimensions.map(() => 0);
  const own = whole[sex];
  const pick = (values: readonly number[]) => dimensions.map((name) => values[whole.dimensions.indexOf(name)]!);
  return {
    ...whole,
    dimensions,
    inflation: widened ? whole.inflation : 1,
    [sex]: {
      ...own,
      size: { mean: [size.h, size.b], covariance: spread },
      at: slopes.map(({ stature, bmi }, i) => mean[i]! - stature * size.h - bmi * size.b),
      stature: slopes.map(({ stature }) => stature),
      bmi: slopes.map(({ bmi }) => bmi),
      bend: none,
      onGirths: [none, none, none],
      girthResiduals: {
        age: [0, 0, 0],
        ageSquared: [0, 0, 0],
        sd: [0, 0, 0],
        sdBend: [0, 0, 0],
        correlations: [0, 0, 0],
      },
      residuals: dimensions.flatMap((_, i) => dimensions.slice(0, i + 1).map((__, j) => residual(i, j))),
      shiftSd: widened ? pick(own.shiftSd) : none,
      lowest: pick(own.lowest),
      highest: pick(own.highest),
    },
  };
}
