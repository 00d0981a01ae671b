import type { BodyDimension, Estimator } from '#body';
import type { Sex } from '../../../scripts/body-model/names.ts';
import { knownOf, type Person } from './people.ts';

/** How far one estimate of a person lies off, mm (weight: g), and whether its 90 % interval holds the truth. */
export interface ErrorOfOne {
  readonly person: Person;
  readonly name: BodyDimension;
  readonly error: number;
  readonly held: boolean;
}

/** The errors of all estimates whose truth is known, from exact values of some dimensions; with or without the age. */
export function errorsOf(
  estimator: Estimator,
  sex: Sex,
  people: readonly Person[],
  inputs: readonly BodyDimension[],
): ErrorOfOne[] {
  return people.flatMap((person) => {
    const { estimates } = estimator.estimate({
      figure: sex,
      ageYears: person.ageYears,
      known: knownOf(person, inputs),
    });
    return estimates.flatMap((one) => {
      if (!('value' in one)) throw new Error(`${one.name} has no estimate: ${one.missing.code}`);
      const truth = person.mm[one.name];
      if (truth === undefined) return [];
      return [{ person, name: one.name, error: one.value - truth, held: truth >= one.low && truth <= one.high }];
    });
  });
}

export const rootMeanSquare = (errors: readonly { readonly error: number }[]): number =>
  Math.sqrt(errors.reduce((sum, { error }) => sum + error ** 2, 0) / errors.length);
