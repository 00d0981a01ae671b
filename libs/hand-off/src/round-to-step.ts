/** Lengths that are not rounded still lose the noise of their arithmetic: the sixth decimal of an inch is 25 nanometres. */
const DECIMALS = 6;

/** Relative slack for a value that stands half-way but for the noise of its arithmetic. */
const NOISE = 1e-9;

/** A length without the noise of its arithmetic. */
export const tidy = (value: number): number => Number(value.toFixed(DECIMALS));

/** `count` steps, as the decimal it is: 3 × 0.1 is 0.3. */
const multiple = (count: number, step: number): number => Number((count * step).toPrecision(12)) + 0;

/** The limits a value may be rounded within, in the value's unit. */
export interface Limits {
  readonly low: number;
  readonly high: number;
}

/** A rounded length, and whether it stayed within its limits. */
interface Stepped {
  readonly value: number;
  readonly within: boolean;
}

/**
 * The whole multiple of `step` nearest to `value` that lies within `limits`; a value half-way goes up. Where no multiple
 * lies within, the nearest one whatever, and `within` is false. `step` > 0, all in one unit.
 */
export function roundToStep(value: number, step: number, limits: Limits): Stepped {
  const nearest = Math.floor(value / step + 0.5 + NOISE);
  const lowest = Math.ceil(limits.low / step - NOISE);
  const highest = Math.floor(limits.high / step + NOISE);
  if (lowest > highest) return { value: multiple(nearest, step), within: false };
  return { value: multiple(Math.min(Math.max(nearest, lowest), highest), step), within: true };
}
