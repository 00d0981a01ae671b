import type { AgePart, BodyModelCoefficients, SexCoefficients } from '#body';

const to = (digits: number) => (value: number) => Number(value.toFixed(digits));

/**
 * Logarithms to six decimals (a thousandth of a millimetre in a metre), covariances to eight (the smallest variance is 0.0004), millimetres to whole ones.
 * Far below the tape; tests/external/body-model checks that the rounded covariance stays positive definite.
 */
export function roundModel(model: BodyModelCoefficients): BodyModelCoefficients {
  return { ...model, woman: roundSex(model.woman), man: roundSex(model.man) };
}

function roundSex(sex: SexCoefficients): SexCoefficients {
  const log = to(6);
  const part = ({ shift, extraSd, unsaidSd }: AgePart): AgePart => ({
    shift: shift.map(to(4)),
    extraSd: extraSd.map(to(4)),
    unsaidSd: to(4)(unsaidSd),
  });
  return {
    logMean: sex.logMean.map(log),
    withinSurvey: sex.withinSurvey.map(to(8)),
    betweenSurveys: sex.betweenSurveys.map(log),
    shiftSd: sex.shiftSd.map(log),
    lowest: sex.lowest.map(Math.round),
    highest: sex.highest.map(Math.round),
    mappingUncertainties: sex.mappingUncertainties.map(({ because, logSd }) => ({
      because,
      logSd: Object.fromEntries(Object.entries(logSd).map(([name, sd]) => [name, log(sd)])),
    })),
    ages: {
      years: sex.ages.years.map(to(1)),
      'waist-girth': part(sex.ages['waist-girth']),
      'hip-girth': part(sex.ages['hip-girth']),
    },
  };
}
