import { HOWS, type DomainError } from '#measure';
import { GARMENT_DIMENSIONS } from './garment-dimension.ts';
import { garmentError } from './garment-errors.ts';
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
  return [garmentError('unknown-construction', { construction, known: CONSTRUCTIONS }, '/construction')];
}

function measureProblems(measure: GarmentMeasure, index: number, all: readonly GarmentMeasure[]): DomainError[] {
  const { name, value, u, how, from } = measure;
  const at = `/measures/${index}`;
  if (!GARMENT_DIMENSIONS.includes(name)) {
    return [garmentError('unknown-dimension', { of: 'garment', name, known: GARMENT_DIMENSIONS }, `${at}/name`)];
  }
  const problems = [
    ...beyond(value, GARMENT_LIMITS[name], 'measure-out-of-range', `${at}/value`),
    ...beyond(u ?? 0, MEASURE_U_LIMITS, 'uncertainty-out-of-range', `${at}/u`),
  ];
  if (all.findIndex((other) => other.name === name) < index)
    problems.push(garmentError('measured-twice', { name }, `${at}/name`));
  if (!HOWS.includes(how)) problems.push(garmentError('unknown-how', { name, how, known: HOWS }, `${at}/how`));
  if (from !== undefined && name !== 'sleeve-length')
    problems.push(garmentError('sleeve-from-misplaced', { name }, `${at}/from`));
  return problems;
}

function beyond(
  valueMm: number,
  [smallestMm, largestMm]: Limits,
  code: `${'measure' | 'thickness' | 'uncertainty'}-out-of-range`,
  pointer: string,
): DomainError[] {
  if (valueMm >= smallestMm && valueMm <= largestMm) return [];
  return [garmentError(code, { valueMm, smallestMm, largestMm }, pointer)];
}
