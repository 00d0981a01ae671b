import type { BodyModelCoefficients, SexCoefficients } from '#body';

const to = (digits: number) => (value: number) => Number(value.toFixed(digits));

/**
 * Logarithms and slopes to six decimals (a thousandth of a millimetre in a metre), covariances to eight (the smallest variance is 0.0004), millimetres to whole ones.
 * Far below the tape; tests/external/body-model checks that the rounded covariance stays positive definite.
 */
export function roundModel(model: BodyModelCoefficients): BodyModelCoefficients {
  return { ...model, woman: roundSex(model.woman), man: roundSex(model.man) };
}

const ends = ([lowest, highest]: readonly [number, number]) => [to(1)(lowest), to(1)(highest)] as const;

function roundSex(sex: SexCoefficients): SexCoefficients {
  const log = to(6);
  /** A list of fixed length keeps it. */
  const logs = <T extends readonly number[]>(values: T): T => values.map(log) as unknown as T;
  const { age, ageSquared, sd, sdBend, correlations } = sex.girthResiduals;
  return {
    size: {
      mean: logs(sex.size.mean),
      covariance: sex.size.covariance.map(to(8)) as unknown as SexCoefficients['size']['covariance'],
    },
    at: logs(sex.at),
    stature: logs(sex.stature),
    bmi: logs(sex.bmi),
    bend: logs(sex.bend),
    onGirths: sex.onGirths.map(logs) as unknown as SexCoefficients['onGirths'],
    girthResiduals: {
      age: logs(age),
      ageSquared: logs(ageSquared),
      sd: logs(sd),
      sdBend: logs(sdBend),
      correlations: logs(correlations),
    },
    residuals: sex.residuals.map(to(8)),
    shiftSd: logs(sex.shiftSd),
    lowest: sex.lowest.map(Math.round),
    highest: sex.highest.map(Math.round),
    bmiRange: { soldiers: ends(sex.bmiRange.soldiers), civilians: ends(sex.bmiRange.civilians) },
    mappingUncertainties: sex.mappingUncertainties.map(({ because, logSd }) => ({
      because,
      logSd: Object.fromEntries(Object.entries(logSd).map(([name, sd]) => [name, log(sd)])),
    })),
  };
}
