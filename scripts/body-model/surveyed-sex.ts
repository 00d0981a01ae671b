import { BODY_DIMENSIONS, type SexCoefficients } from '#body';
import { mappingUncertaintiesAround } from './mapping-uncertainties.ts';
import { joinSurveys } from './join-surveys.ts';
import { quantile } from './moments.ts';
import type { Sex } from './names.ts';
import { shiftSds } from './shift.ts';
import type { SurveyRows } from './survey-rows.ts';
import { tradeMeasures } from './trade-measures.ts';
import { waistLevels } from './waist-levels.ts';

const NO_PART = { shift: [0], extraSd: [0], unsaidSd: 0 };

/** The model of one sex as the soldiers have it: nothing about age yet. */
export function surveyedSex(rows: SurveyRows, sex: Sex): SexCoefficients {
  const full = tradeMeasures(rows.in1988, 1988, sex);
  const part = tradeMeasures(rows.in2012, 2012, sex);
  const joined = joinSurveys(full, part);
  const n = joined.names.length;
  const order = BODY_DIMENSIONS.map((name) => joined.names.indexOf(name));
  const pick = (values: ArrayLike<number>) => order.map((index) => values[index]!);
  const logMean = pick(joined.mean);

  const { naturalFrom } = waistLevels(full);
  const samples = { ...part, 'waist-girth': part['navel-girth']!.map(naturalFrom) };
  /** A percentile of each survey that has the measure; the widest one counts. */
  const percentiles = (name: string, p: number) =>
    [full, samples].flatMap((survey) => (name in survey ? [quantile((survey as typeof full)[name]!, p)] : []));

  return {
    logMean,
    withinSurvey: order.flatMap((row, i) => order.slice(0, i + 1).map((column) => joined.within[row * n + column]!)),
    betweenSurveys: pick(joined.between),
    shiftSd: pick(shiftSds(joined, new Set(Object.keys(part)))),
    lowest: BODY_DIMENSIONS.map((name) => Math.min(...percentiles(name, 0.01))),
    highest: BODY_DIMENSIONS.map((name) => Math.max(...percentiles(name, 0.99))),
    mappingUncertainties: mappingUncertaintiesAround((name) => Math.exp(logMean[BODY_DIMENSIONS.indexOf(name)]!)),
    ages: { years: [0], 'waist-girth': NO_PART, 'hip-girth': NO_PART },
  };
}
