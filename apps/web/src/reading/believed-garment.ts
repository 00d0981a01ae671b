import { GARMENT_MEASURE_RECORD, garmentProblems, type Garment, type GarmentDimension } from '#garment';
import type { Typed } from '../notebook/typed.ts';
import { valueIn } from './read.ts';

const PLAIN: Garment = {
  title: '',
  construction: 'drop-shoulder',
  measures: [],
  thicknessMm: 3,
  thicknessU: 1,
  layer: null,
  wornStretched: false,
  fits: null,
  neckline: null,
  sleeve: 'long',
  wears: {},
};
/** Whether a garment may be so. */
const believed = (part: Partial<Garment>): boolean => garmentProblems({ ...PLAIN, ...part }).length === 0;

const { min, max } = GARMENT_MEASURE_RECORD.value.as.limits;

/** A length of a garment that could be read and believed, mm. */
export function lengthOf(name: GarmentDimension, typed: Typed | undefined): number | null {
  const value = valueIn(typed);
  if (value === null || value < min || value > max) return null;
  return believed({ measures: [{ name, value, how: 'home' }] }) ? value : null;
}

/** A thickness of a fabric that could be read and believed, mm. */
export function thicknessOf(typed: Typed): number | null {
  const thicknessMm = valueIn(typed, 'small');
  return thicknessMm !== null && believed({ thicknessMm }) ? thicknessMm : null;
}

/** True where a thickness can be read and is left out all the same. */
export const isNoThickness = (typed: Typed): boolean => valueIn(typed, 'small') !== null && thicknessOf(typed) === null;
