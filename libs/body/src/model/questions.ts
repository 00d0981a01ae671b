import type { BodyDimension } from '../body-dimension.ts';
import type { Figure } from '../body.ts';
import type { KnownValue } from '../estimator.ts';
import type { BodyModelCoefficients } from './coefficients.ts';
import { findingOf, type Finding } from './finding.ts';
import type { Gaussian } from './gaussian.ts';
import { knownLogs } from './known-logs.ts';
import { lineariseAround } from './size-fit.ts';
import { plausibilityOf } from './plausibility.ts';
import type { BodyQuestion } from './question-codes.ts';
import { priorsOf, sexesOf } from './posterior.ts';

/** What was typed for a body. */
export interface QuestionsInput {
  readonly figure: Figure;
  readonly ageYears: number | null;
  readonly known: readonly KnownValue[];
}

/** A question to the maker about one value, or about two that may have changed places. Nothing is changed by it. */
export type Question = BodyQuestion & {
  readonly name: BodyDimension;
  /** What the value would become, mm (weight: g); both values where two changed places; null where no known slip explains it. */
  readonly wouldBe: number | readonly { readonly name: BodyDimension; readonly value: number }[] | null;
  /** How many standard deviations the value lies from what the others lead to expect. */
  readonly z: number;
};

/**
 * Asks at most one question per suspicious value: each value against what the others lead to expect, with the widened spread; of the known slips, the
 * one whose undoing leaves the smallest Mahalanobis distance. Where the sex is not said, only what neither sex explains. Children and babies: none, for the
 * model is of adults. The function it returns throws DomainError from `knownLogs` for values no measure can have.
 */
export function bodyQuestioner(coefficients: BodyModelCoefficients): (input: QuestionsInput) => readonly Question[] {
  const priors = priorsOf(coefficients, 'anyone');
  return ({ figure, ageYears, known }) => {
    if (figure === 'child' || figure === 'baby' || known.length === 0) return [];
    const logs = knownLogs(coefficients.dimensions, known);
    const asked = sexesOf(figure).map((sex) =>
      askedOf(coefficients.dimensions, lineariseAround(priors[sex], ageYears, logs), known),
    );
    asked.sort((a, b) => a.questions.length - b.questions.length || a.distance - b.distance);
    return asked[0]!.questions;
  };
}

function askedOf(dimensions: readonly BodyDimension[], prior: Gaussian, known: readonly KnownValue[]) {
  const expected = known.map(({ name }) => Math.exp(prior.mean[dimensions.indexOf(name)]!));
  const values = [...known];
  const questions: Question[] = [];
  let open = known.map((_, index) => index);
  const asked = new Set<number>();
  for (;;) {
    const left = open.map((index) => values[index]!);
    const plausibility = plausibilityOf(prior, knownLogs(dimensions, left));
    const finding = findingOf(
      plausibility,
      left.map((one, i) => ({ ...one, expected: expected[open[i]!]! })),
      (i) => asked.has(open[i]!),
    );
    if (finding === null) return { questions, distance: plausibility.distance };
    questions.push(...questionsAbout(finding, left, plausibility.z, known.length === 1));
    for (const { index, value } of finding.changes) {
      asked.add(open[index]!);
      values[open[index]!] = { ...left[index]!, value: value ?? left[index]!.value };
    }
    if (finding.code === 'unlikely') open = open.filter((_, i) => i !== finding.changes[0]!.index);
    if (open.length === 0) return { questions, distance: 0 };
  }
}

/** One question for each value of a finding; two fields that changed places are one question. */
function questionsAbout(
  { code, changes }: Finding,
  typed: readonly KnownValue[],
  z: readonly number[],
  alone: boolean,
): Question[] {
  if (code === 'swapped-fields') {
    const [a, b] = changes.map(({ index }) => index) as [number, number];
    const [name, other] = [typed[a]!.name, typed[b]!.name];
    const wouldBe = [
      { name, value: typed[b]!.value },
      { name: other, value: typed[a]!.value },
    ];
    return [{ code, params: { name, other }, name, wouldBe, z: z[a]! }];
  }
  return changes.map(({ index, value }) => {
    const { name } = typed[index]!;
    return { code, params: { name, smaller: z[index]! < 0, alone }, name, wouldBe: value, z: z[index]! };
  });
}
