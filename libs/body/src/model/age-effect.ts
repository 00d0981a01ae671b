import type { GirthResiduals } from './coefficients.ts';

/** Ages the model answers for; a younger or an older adult is answered as one of these, years. */
const YOUNGEST = 17;
const OLDEST = 90;

/** Where no age is said, any of these is as likely as any other, years (assumed: the ages that the civilians were surveyed at). */
const UNSAID = [18, 80] as const;

const ages = (years: number): number => (years - 45) / 20;

/** The mean of Aⁿ where the age is not said: the integral of Aⁿ over those ages, by their length. */
const momentUnsaid = (n: number): number => {
  const [low, high] = [ages(UNSAID[0]), ages(UNSAID[1])];
  return (high ** (n + 1) - low ** (n + 1)) / ((n + 1) * (high - low));
};

const MEAN = momentUnsaid(1);
const MEAN_SQUARED = momentUnsaid(2);
const VARIANCE = MEAN_SQUARED - MEAN ** 2;
const COVARIANCE = momentUnsaid(3) - MEAN * MEAN_SQUARED;
const VARIANCE_SQUARED = momentUnsaid(4) - MEAN_SQUARED ** 2;

/** What age does to the residual of each civilian girth: its mean; and where the age is not said, the covariance of two. */
interface AgeEffect {
  readonly mean: readonly number[];
  covariance(one: number, other: number): number;
}

export function ageEffect({ age, ageSquared }: GirthResiduals, ageYears: number | null): AgeEffect {
  if (ageYears === null)
    return {
      mean: age.map((slope, g) => slope * MEAN + ageSquared[g]! * MEAN_SQUARED),
      covariance: (one, other) =>
        age[one]! * age[other]! * VARIANCE +
        (age[one]! * ageSquared[other]! + ageSquared[one]! * age[other]!) * COVARIANCE +
        ageSquared[one]! * ageSquared[other]! * VARIANCE_SQUARED,
    };
  const a = ages(Math.min(Math.max(ageYears, YOUNGEST), OLDEST));
  return { mean: age.map((slope, g) => slope * a + ageSquared[g]! * a ** 2), covariance: () => 0 };
}
