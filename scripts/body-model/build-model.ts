import { BODY_DIMENSIONS, type BodyModelCoefficients } from '#body';
import { civiliansFrom } from './civilians.ts';
import { rowCount } from './columns.ts';
import { MAPPINGS } from './mappings.ts';
import { roundModel } from './round-model.ts';
import { surveyedSex } from './surveyed-sex.ts';
import type { AllRows, SurveyRows } from './survey-rows.ts';

/** Civilians differ from soldiers by 1.0 to 1.5 times the spread; with the shift between populations this factor comes to about 1.25. */
const INFLATION = 1.18;

const TITLES = {
  in1988: 'US Army Anthropometric Survey 1988 (ANSUR I): Gordon et al. 1989, NATICK/TR-89/044',
  in2012: 'US Army Anthropometric Survey 2012 (ANSUR II): Gordon et al. 2014, NATICK/TR-15/007',
  nhanes:
    'US National Health and Nutrition Examination Survey, body measures 2017 to March 2020, ages 18 to 80, CDC (stature, weight, waist, hip, upper arm)',
} as const;

/** The whole model from the rows. The same rows give the same numbers. */
export function buildModel(rows: AllRows): BodyModelCoefficients {
  return roundModel({
    version: 2,
    sources: (['in1988', 'in2012', 'nhanes'] as const).map((survey) => ({
      title: TITLES[survey],
      people: { woman: people(rows.woman, survey), man: people(rows.man, survey) },
    })),
    dimensions: BODY_DIMENSIONS,
    mappings: MAPPINGS,
    inflation: INFLATION,
    woman: surveyedSex(rows.woman, 'woman'),
    man: surveyedSex(rows.man, 'man'),
  });
}

const people = (rows: SurveyRows, survey: keyof SurveyRows) =>
  survey === 'nhanes' ? civiliansFrom(rows.nhanes, (mm) => mm).length : rowCount(rows[survey]);
