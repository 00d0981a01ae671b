import type { BodyDimension } from '../body-dimension.ts';

/** A survey the model was made from, and how many people of it. */
export interface SurveySource {
  readonly title: string;
  readonly people: { readonly woman: number; readonly man: number };
}

/** How a measure of the survey becomes the trade's: value = scale × survey + offset, mm. */
export interface Mapping {
  readonly name: BodyDimension;
  readonly from: string;
  readonly scale: number;
  readonly offset: { readonly woman: number; readonly man: number };
  readonly reason: string;
  readonly source: string;
}

/** The uncertainty of a mapping: one hidden number of standard deviation 1 that moves each named dimension by this much of its logarithm. */
export interface MappingUncertainty {
  readonly because: string;
  readonly logSd: Readonly<Partial<Record<BodyDimension, number>>>;
}

/** What age does to one girth, at the ages of `AgeParts.years`: a move of its log mean, and a further spread. */
export interface AgePart {
  readonly shift: readonly number[];
  readonly extraSd: readonly number[];
  /** Where no age is said: no move, and a spread that admits every adult age. */
  readonly unsaidSd: number;
}

export interface AgeParts {
  readonly years: readonly number[];
  readonly 'waist-girth': AgePart;
  readonly 'hip-girth': AgePart;
}

/** The model of one sex. Numbers in the order of `dimensions`, natural logarithms of mm (weight: g) unless said. */
export interface SexCoefficients {
  readonly logMean: readonly number[];
  /** Covariance within a survey: lower triangle, row by row. */
  readonly withinSurvey: readonly number[];
  /** What the difference between the surveys adds: the covariance of all their people together is withinSurvey + b·bᵀ. */
  readonly betweenSurveys: readonly number[];
  /** Standard deviation by which another population's means may lie off, stature and weight being equal. */
  readonly shiftSd: readonly number[];
  /** The survey's 1st and 99th percentile, mm (weight: g). */
  readonly lowest: readonly number[];
  readonly highest: readonly number[];
  readonly mappingUncertainties: readonly MappingUncertainty[];
  readonly ages: AgeParts;
}

/** The committed content of `coefficients.json`, made by `npm run build:body-model`. */
export interface BodyModelCoefficients {
  readonly version: number;
  readonly sources: readonly SurveySource[];
  readonly dimensions: readonly BodyDimension[];
  readonly mappings: readonly Mapping[];
  /** Factor on the standard deviation within a survey, for people who are not soldiers. */
  readonly inflation: number;
  readonly woman: SexCoefficients;
  readonly man: SexCoefficients;
}
