import { BODY_DIMENSIONS, CIVILIAN_GIRTHS, type BodyDimension, type SexCoefficients } from '#body';
import { civiliansFrom, sizeMoments, waistLevelDoubt } from './civilians.ts';
import type { Columns } from './columns.ts';
import { girthRegressions } from './girth-regressions.ts';
import { joinSurveys } from './join-surveys.ts';
import { mappingUncertaintiesAround } from './mapping-uncertainties.ts';
import { quantile } from './moments.ts';
import type { Sex } from './names.ts';
import { shiftSds } from './shift.ts';
import { bentRegression, SIZE_REGRESSIONS, soldierRegressions, type SoldierRegression } from './soldier-regressions.ts';
import type { SurveyRows } from './survey-rows.ts';
import { tradeMeasures } from './trade-measures.ts';
import { waistLevels } from './waist-levels.ts';

/** A woman's chest bends upward with her body mass index as her hip does; a man's shows no bend. */
const BENT: Readonly<Record<Sex, readonly BodyDimension[]>> = { woman: ['chest-girth'], man: [] };

const isGirth = (name: BodyDimension): name is (typeof CIVILIAN_GIRTHS)[number] =>
  (CIVILIAN_GIRTHS as readonly BodyDimension[]).includes(name);

/** The model of one sex, unrounded. */
export function surveyedSex(rows: SurveyRows, sex: Sex): SexCoefficients {
  const full = tradeMeasures(rows.in1988, 1988, sex);
  const part = tradeMeasures(rows.in2012, 2012, sex);
  const joined = joinSurveys(full, part);
  const levels = waistLevels(full);
  const civilians = civiliansFrom(rows.nhanes, levels.naturalFrom);
  const civilian = girthRegressions(civilians);
  const soldiers = soldierRegressions(joined);

  const regressionOf = (name: BodyDimension): SoldierRegression => {
    const own = SIZE_REGRESSIONS[name];
    if (own !== undefined) return own;
    if (isGirth(name)) {
      const g = CIVILIAN_GIRTHS.indexOf(name);
      return { ...civilian.girths[g]!, onGirths: CIVILIAN_GIRTHS.map((_, one) => Number(one === g)) };
    }
    const straight = soldiers.regressions[soldiers.names.indexOf(name)]!;
    return BENT[sex].includes(name) ? bentRegression(name, [full, part], straight) : straight;
  };
  const regressions = BODY_DIMENSIONS.map(regressionOf);
  const residual = (row: BodyDimension, column: BodyDimension) => {
    const [i, j] = [soldiers.names.indexOf(row), soldiers.names.indexOf(column)];
    return i === -1 || j === -1 ? 0 : soldiers.residuals[i * soldiers.names.length + j]!;
  };

  /** Everybody who was measured at a dimension: a percentile of each survey that has it; the widest one counts. */
  const samples = [
    full,
    { ...part, 'waist-girth': part['navel-girth']!.map(levels.naturalFrom) },
    columnsOf(civilians),
  ];
  const percentiles = (name: string, p: number) =>
    samples.flatMap((survey) => (name in survey ? [quantile(survey[name as keyof typeof survey]!, p)] : []));
  const shift = shiftSds(joined, new Set(Object.keys(part)));
  const meanMm = (name: BodyDimension) => Math.exp(joined.mean[joined.names.indexOf(name)]!);

  return {
    size: sizeMoments(civilians),
    at: regressions.map(({ at }) => at),
    stature: regressions.map(({ stature }) => stature),
    bmi: regressions.map(({ bmi }) => bmi),
    bend: regressions.map(({ bend }) => bend),
    onGirths: CIVILIAN_GIRTHS.map((_, g) =>
      regressions.map(({ onGirths }) => onGirths[g]!),
    ) as unknown as SexCoefficients['onGirths'],
    girthResiduals: civilian.residuals,
    residuals: BODY_DIMENSIONS.flatMap((row, i) =>
      BODY_DIMENSIONS.slice(0, i + 1).map((column) => residual(row, column)),
    ),
    shiftSd: BODY_DIMENSIONS.map((name) => shift[joined.names.indexOf(name)]!),
    lowest: BODY_DIMENSIONS.map((name) => Math.min(...percentiles(name, 0.01))),
    highest: BODY_DIMENSIONS.map((name) => Math.max(...percentiles(name, 0.99))),
    bmiRange: { soldiers: bmiRange([full, part]), civilians: bmiRange([columnsOf(civilians)]) },
    mappingUncertainties: [
      ...mappingUncertaintiesAround(meanMm),
      {
        because: 'at which level the civilians’ waist was taken',
        logSd: { 'waist-girth': waistLevelDoubt(rows.nhanes, levels) },
      },
    ],
  };
}

const columnsOf = (civilians: ReturnType<typeof civiliansFrom>): Record<string, number[]> =>
  Object.fromEntries(
    (['stature', 'weight', ...CIVILIAN_GIRTHS] as const).map((name) => [name, civilians.map((person) => person[name])]),
  );

/** The 1st and 99th percentile of the body mass index, the widest survey's. */
function bmiRange(surveys: readonly Columns[]): [number, number] {
  const indexes = surveys.map((survey) =>
    survey['weight']!.map((weight, row) => weight / 1000 / (survey['stature']![row]! / 1000) ** 2),
  );
  return [
    Math.min(...indexes.map((values) => quantile(values, 0.01))),
    Math.max(...indexes.map((values) => quantile(values, 0.99))),
  ];
}
