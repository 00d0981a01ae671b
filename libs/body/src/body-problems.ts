import { DomainError, HOWS } from '#measure';
import { BODY_DIMENSIONS } from './body-dimension.ts';
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
    const known = FIGURES.join(', ');
    return [new DomainError('unknown-figure', `There is no figure "${body.figure}". There are: ${known}.`, '/figure')];
  }
  return [...ageProblems(body), ...body.measures.flatMap((_, index) => measureProblems(body, index))];
}

function ageProblems({ figure, ageYears }: Body): DomainError[] {
  const [youngest, oldest] = AGES[figure];
  if (ageYears === null || (ageYears >= youngest && ageYears <= oldest)) return [];
  const instead = ageYears < youngest && youngest > 0 ? ' For a younger body say child or baby.' : '';
  const read = `Read an age of ${ageYears} years; for "${figure}" it lies between ${youngest} and ${oldest}.`;
  return [new DomainError('age-out-of-range', read + instead, '/ageYears')];
}

function measureProblems({ figure, measures }: Body, index: number): DomainError[] {
  const measure = measures[index]!;
  const at = `/measures/${index}`;
  if (!BODY_DIMENSIONS.includes(measure.name)) {
    const known = BODY_DIMENSIONS.join(', ');
    const text = `There is no body dimension "${measure.name}". There are: ${known}.`;
    return [new DomainError('unknown-dimension', text, `${at}/name`)];
  }
  const problems: DomainError[] = [];
  if (measures.findIndex(({ name }) => name === measure.name) < index) {
    problems.push(new DomainError('measured-twice', `${measure.name} is given twice; keep one of them.`, `${at}/name`));
  }
  if (!HOWS.includes(measure.how)) {
    const text = `${measure.name}: there is no way of measuring "${measure.how}". There are: ${HOWS.join(', ')}.`;
    problems.push(new DomainError('unknown-how', text, `${at}/how`));
  }
  problems.push(...valueProblems(figure, measure, at));
  return problems;
}

function valueProblems(figure: Figure, { name, value, u }: BodyMeasure, at: string): DomainError[] {
  const [smallest, largest] = humanLimits(figure, name);
  const unit = name === 'weight' ? 'g' : 'mm';
  if (!(value >= smallest / WRONG_UNIT && value <= largest * WRONG_UNIT)) {
    const whose = figure === 'unsaid' ? 'an adult’s' : `a ${figure}’s`;
    const text = `${name}: read ${value} ${unit}; ${whose} lies between ${smallest} and ${largest} ${unit}.`;
    return [new DomainError('measure-out-of-range', text, `${at}/value`)];
  }
  if (u !== undefined && !(u > 0 && u <= LARGEST_U * value)) {
    const text = `${name}: read an uncertainty of ${u} ${unit}; it is above 0 and at most half of ${value} ${unit}.`;
    return [new DomainError('uncertainty-out-of-range', text, `${at}/u`)];
  }
  return [];
}
