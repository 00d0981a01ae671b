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

/** The girths that civilians of all ages and sizes were measured at; their residuals carry over to all other dimensions. */
export const CIVILIAN_GIRTHS = ['waist-girth', 'hip-girth', 'upper-arm-girth'] as const;

/** A number for each of `CIVILIAN_GIRTHS`. */
export type PerGirth = readonly [waist: number, hip: number, upperArm: number];

/** The residual r of each civilian girth, given stature, weight and age. A = (age − 45 years)/20. */
export interface GirthResiduals {
  /** Its mean is age·A + ageSquared·A². */
  readonly age: PerGirth;
  readonly ageSquared: PerGirth;
  /** Its variance is sd² + (sdBend·p)², p = max(0, b). */
  readonly sd: PerGirth;
  readonly sdBend: PerGirth;
  /** Correlations waist–hip, waist–arm, hip–arm. */
  readonly correlations: readonly [number, number, number];
}

/**
 * The model of one sex: with h = ln(stature/1700 mm), b = ln(BMI/25) and p = max(0, b), the natural logarithm of each dimension (mm; weight: g) is
 * `at + stature·h + bmi·b + bend·p² + onGirths·r + e`, r the residuals of the civilian girths, e its own. Numbers in the order of `dimensions`.
 */
export interface SexCoefficients {
  /** Mean and covariance (hh, hb, bb) of h and b among civilian adults. */
  readonly size: {
    readonly mean: readonly [h: number, b: number];
    readonly covariance: readonly [hh: number, hb: number, bb: number];
  };
  readonly at: readonly number[];
  readonly stature: readonly number[];
  readonly bmi: readonly number[];
  readonly bend: readonly number[];
  /** One list for each civilian girth. */
  readonly onGirths: readonly [readonly number[], readonly number[], readonly number[]];
  readonly girthResiduals: GirthResiduals;
  /** Covariance of e within a survey: lower triangle, row by row. */
  readonly residuals: readonly number[];
  /** Standard deviation by which another population's means may lie off, stature and weight being equal. */
  readonly shiftSd: readonly number[];
  /** The surveys' 1st and 99th percentile, mm (weight: g); and those of the body mass index, kg/m². */
  readonly lowest: readonly number[];
  readonly highest: readonly number[];
  readonly bmiRange: { readonly soldiers: readonly [number, number]; readonly civilians: readonly [number, number] };
  readonly mappingUncertainties: readonly MappingUncertainty[];
}

/** The committed content of `coefficients.json`, made by `npm run build:body-model`. */
export interface BodyModelCoefficients {
  readonly version: number;
  readonly sources: readonly SurveySource[];
  readonly dimensions: readonly BodyDimension[];
  readonly mappings: readonly Mapping[];
  /** Factor on the standard deviation of e within a survey, for people who are not soldiers. */
  readonly inflation: number;
  readonly woman: SexCoefficients;
  readonly man: SexCoefficients;
}
