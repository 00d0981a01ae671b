/** The body that the model's regressions are written around: 1700 mm tall, of a body mass index of 25 kg/m² (a choice of origin, no finding). */
export const REFERENCE_STATURE = 1700;
const REFERENCE_BMI = 25;

/** A body's size as the model takes it: `h` = ln(stature/1700 mm), `b` = ln(BMI/25). */
export interface BodySize {
  readonly h: number;
  readonly b: number;
}

/** ln weight in g of the reference body; ln weight = this + 2h + b. */
export const REFERENCE_LOG_WEIGHT = Math.log(REFERENCE_BMI * (REFERENCE_STATURE / 1000) ** 2 * 1000);

/** @param statureMm mm @param weightG g */
export function bodySize(statureMm: number, weightG: number): BodySize {
  const h = Math.log(statureMm / REFERENCE_STATURE);
  return { h, b: Math.log(weightG) - REFERENCE_LOG_WEIGHT - 2 * h };
}

/** kg/m² */
export const bodyMassIndex = (b: number): number => REFERENCE_BMI * Math.exp(b);
