import { DomainError, HOWS } from '#measure';
import { GARMENT_DIMENSIONS } from './garment-dimension.ts';
import {
  GARMENT_LIMITS,
  LAYER_LIMITS,
  MEASURE_U_LIMITS,
  THICKNESS_LIMITS,
  THICKNESS_U_LIMITS,
  type Limits,
} from './garment-limits.ts';
import { CONSTRUCTIONS, type Construction, type Garment, type GarmentMeasure } from './garment.ts';

/**
 * Everything that keeps a garment from being used, each with a JSON Pointer into it; an empty list when it is sound. Codes:
 * `unknown-construction`, `unknown-dimension`, `unknown-how`, `measured-twice`, `measure-out-of-range`, `uncertainty-out-of-range`,
 * `sleeve-from-misplaced`, `thickness-out-of-range`. What is only unlikely is not here: see `garmentQuestions`.
 */
export function garmentProblems(garment: Garment): readonly DomainError[] {
  const { construction, measures, thicknessMm, thicknessU, layer } = garment;
  return [
    ...constructionProblems(construction),
    ...measures.flatMap((measure, index) => measureProblems(measure, index, measures)),
    ...beyond(thicknessMm, THICKNESS_LIMITS, 'thickness-out-of-range', '/thicknessMm'),
    ...beyond(thicknessU, THICKNESS_U_LIMITS, 'uncertainty-out-of-range', '/thicknessU'),
    ...beyond(layer?.thicknessMm ?? 0, LAYER_LIMITS, 'thickness-out-of-range', '/layer/thicknessMm'),
    ...beyond(layer?.u ?? 0, THICKNESS_U_LIMITS, 'uncertainty-out-of-range', '/layer/u'),
  ];
}

function constructionProblems(construction: Construction): DomainError[] {
  if (CONSTRUCTIONS.includes(construction)) return [];
  const text = `There is no construction "${construction}". There are: ${CONSTRUCTIONS.join(', ')}.`;
  return [new DomainError('unknown-construction', text, '/construction')];
}

function measureProblems(measure: GarmentMeasure, index: number, all: readonly GarmentMeasure[]): DomainError[] {
  const { name, value, u, how, from } = measure;
  const at = `/measures/${index}`;
  const problem = (code: string, text: string, field: string) => new DomainError(code, text, `${at}/${field}`);
  if (!GARMENT_DIMENSIONS.includes(name)) {
    const text = `There is no garment dimension "${name}". There are: ${GARMENT_DIMENSIONS.join(', ')}.`;
    return [problem('unknown-dimension', text, 'name')];
  }
  const problems = [
    ...beyond(value, GARMENT_LIMITS[name], 'measure-out-of-range', `${at}/value`),
    ...beyond(u ?? 0, MEASURE_U_LIMITS, 'uncertainty-out-of-range', `${at}/u`),
  ];
  if (all.findIndex((other) => other.name === name) < index)
    problems.push(problem('measured-twice', `${name} is given twice; keep one of them.`, 'name'));
  if (!HOWS.includes(how))
    problems.push(
      problem('unknown-how', `There is no way of measuring "${how}". There are: ${HOWS.join(', ')}.`, 'how'),
    );
  if (from !== undefined && name !== 'sleeve-length')
    problems.push(
      problem('sleeve-from-misplaced', `Only sleeve-length is measured from somewhere; ${name} is not.`, 'from'),
    );
  return problems;
}

function beyond(value: number, [smallest, largest]: Limits, code: string, pointer: string): DomainError[] {
  if (value >= smallest && value <= largest) return [];
  return [new DomainError(code, `Read ${value} mm; it lies between ${smallest} and ${largest} mm.`, pointer)];
}
