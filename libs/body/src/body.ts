import type { How } from '#measure';
import type { BodyDimension } from './body-dimension.ts';
import type { BodySource } from './source-codes.ts';

export const FIGURES = ['woman', 'man', 'child', 'baby', 'unsaid'] as const;
export type Figure = (typeof FIGURES)[number];

/** One measurement as the maker gave it. `value` in mm (weight: g); `u` its standard uncertainty in the same unit, when she knows it. */
export interface BodyMeasure {
  readonly name: BodyDimension;
  readonly value: number;
  readonly how: How;
  readonly u?: number;
  /** Where it was read, when `how` does not say enough. */
  readonly from?: BodySource;
}

/** A body as recorded. `ageYears` in years, fractions allowed; null where it was not said. At most one measure a dimension. */
export interface Body {
  readonly figure: Figure;
  readonly ageYears: number | null;
  readonly measures: readonly BodyMeasure[];
}
