import { HOWS, type DomainError } from '#measure';
import { BODY_DIMENSIONS } from './body-dimension.ts';
import { bodyError } from './body-errors.ts';
import { FIGURES, type Body, type BodyMeasure, type Figure } from './body.ts';
import { AGES, humanLimits } from './human-limits.ts';

/**
 * A measure in the wrong unit (inches for centimetres, or the other way round) or of half a girth must come through, so that the maker
 * can be asked about it: values this many times outside the human limits are still taken.
 */
const WRONG_UNIT = 2.54;

/** An uncertainty larger than this share of its value says nothing (assumed). */
const LARGEST_U = 0.5;

/** Everything that keeps a body from being used, each with a JSON Pointer into it; an empty list when it is sound. */
export function bodyProblems(body: Body): readonly DomainError[] {
  if (!FIGURES.includes(body.figure)) {
    return [bodyError('unknown-figure', { figure: body.figure, known: FIGURES }, '/figure')];
  }
  return [...ageProblems(body), ...body.measures.flatMap((_, index) => measureProblems(body, index))];
}

function ageProblems({ figure, ageYears }: Body): DomainError[] {
  const [youngest, oldest] = AGES[figure];
  if (ageYears === null || (ageYears >= youngest && ageYears <= oldest)) return [];
  return [bodyError('age-out-of-range', { figure, ageYears, youngest, oldest }, '/ageYears')];
}

function measureProblems({ figure, measures }: Body, index: number): DomainError[] {
  const measure = measures[index]!;
  const at = `/measures/${index}`;
  if (!BODY_DIMENSIONS.includes(measure.name)) {
    const params = { of: 'body', name: measure.name, known: BODY_DIMENSIONS } as const;
    return [bodyError('unknown-dimension', params, `${at}/name`)];
  }
  const problems: DomainError[] = [];
  if (measures.findIndex(({ name }) => name === measure.name) < index) {
    problems.push(bodyError('measured-twice', { name: measure.name }, `${at}/name`));
  }
  if (!HOWS.includes(measure.how)) {
    problems.push(bodyError('unknown-how', { name: measure.name, how: measure.how, known: HOWS }, `${at}/how`));
  }
  problems.push(...valueProblems(figure, measure, at));
  return problems;
}

function valueProblems(figure: Figure, { name, value, u }: BodyMeasure, at: string): DomainError[] {
  const [smallest, largest] = humanLimits(figure, name);
  const unit = name === 'weight' ? 'g' : 'mm';
  if (!(value >= smallest / WRONG_UNIT && value <= largest * WRONG_UNIT)) {
    return [bodyError('measure-out-of-range', { name, figure, value, smallest, largest, unit }, `${at}/value`)];
  }
  if (u !== undefined && !(u > 0 && u <= LARGEST_U * value)) {
    return [bodyError('uncertainty-out-of-range', { name, u, value, unit }, `${at}/u`)];
  }
  return [];
}
