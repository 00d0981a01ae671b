const MM_PER_INCH = 25.4;
const GRAMS_PER_POUND = 453.59237;

/** How a value may have been typed: as so many of `unit` (mm or g), read to `step` of it. Steps: the tenth of a centimetre, the eighth of an inch (practice). */
const LENGTHS = [
  { unit: 10, step: 0.1 },
  { unit: MM_PER_INCH, step: 0.125 },
];
const WEIGHTS = [
  { unit: 1000, step: 0.1 },
  { unit: GRAMS_PER_POUND, step: 1 },
];

/** How near to a step a value must lie to have been typed so, as a part of the step. */
const NEAR = 0.02;

/**
 * What a value (mm, or g) would be had two neighbouring digits of it been swapped in typing, in centimetres or inches (kilograms or pounds). Digits of the whole part;
 * and across the point where a decimal was typed.
 * @example swappedDigits(890, 'length') // [980], among what 35 inches would give if it were a whole eighth of an inch
 */
export function swappedDigits(value: number, kind: 'length' | 'weight'): readonly number[] {
  const forms = kind === 'length' ? LENGTHS : WEIGHTS;
  const others = forms.flatMap(({ unit, step }) => {
    const steps = value / unit / step;
    if (Math.abs(steps - Math.round(steps)) > NEAR) return [];
    const typed = Math.round(steps) * step;
    return (step === 0.1 ? decimalSwaps(typed) : wholeSwaps(typed)).map((other) => other * unit);
  });
  return others.filter((other, index) => others.findIndex((one) => Math.abs(one - other) < 1e-6) === index);
}

/** Swaps in a number with at most one decimal: among all its digits where it has one, else among those of the whole number. */
function decimalSwaps(typed: number): number[] {
  const tenths = Math.round(typed * 10);
  return tenths % 10 === 0 ? wholeSwaps(tenths / 10) : neighboursSwapped(String(tenths)).map((other) => other / 10);
}

/** Swaps in the whole part, the fraction kept. */
function wholeSwaps(typed: number): number[] {
  const whole = Math.floor(typed);
  return neighboursSwapped(String(whole)).map((other) => other + (typed - whole));
}

/** A leading nought counts as a digit: 40 typed as 04 reads 4. */
function neighboursSwapped(typed: string): number[] {
  const digits = `0${typed}`;
  return Array.from({ length: digits.length - 1 }, (_, i) =>
    Number(digits.slice(0, i) + digits.charAt(i + 1) + digits.charAt(i) + digits.slice(i + 2)),
  ).filter((other) => other !== Number(typed));
}
