import { measureError } from './measure-errors.ts';

/**
 * Rational approximations of the error function. Source: W. J. Cody, "Rational Chebyshev Approximations for the Error
 * Function", Mathematics of Computation 23 (1969), 631–637; relative error below 1e-15 or so. Highest power first,
 * numerator over denominator (in y², y and 1/y²).
 */
const NEAR = {
  over: [
    1.85777706184603153e-1, 3.1611237438705656, 1.13864154151050156e2, 3.77485237685302021e2, 3.20937758913846947e3,
  ],
  under: [1, 2.36012909523441209e1, 2.44024637934444173e2, 1.28261652607737228e3, 2.84423683343917062e3],
};
const MIDDLE = {
  over: [
    2.15311535474403846e-8, 5.64188496988670089e-1, 8.88314979438837594, 6.61191906371416295e1, 2.98635138197400131e2,
    8.8195222124176909e2, 1.71204761263407058e3, 2.05107837782607147e3, 1.23033935479799725e3,
  ],
  under: [
    1, 1.57449261107098347e1, 1.17693950891312499e2, 5.37181101862009858e2, 1.62138957456669019e3,
    3.29079923573345963e3, 4.36261909014324716e3, 3.43936767414372164e3, 1.23033935480374942e3,
  ],
};
const FAR = {
  over: [
    1.63153871373020978e-2, 3.05326634961232344e-1, 3.60344899949804439e-1, 1.25781726111229246e-1,
    1.60837851487422766e-2, 6.58749161529837803e-4,
  ],
  under: [
    1, 2.56852019228982242, 1.87295284992346725, 5.27905102951428412e-1, 6.05183413124413191e-2, 2.33520497626869185e-3,
  ],
};

/** Φ(x): the chance that a normal variable of mean 0 and standard deviation 1 is at most x. Absolute error below 1e-14. */
export function normalCdf(x: number): number {
  const y = Math.abs(x) * Math.SQRT1_2;
  if (y <= 0.46875) return 0.5 + (x * Math.SQRT1_2 * ratio(NEAR, y * y)) / 2;
  const tail = upperTail(y) / 2;
  return x > 0 ? 1 - tail : tail;
}

/** The complementary error function for y above 0.46875. */
function upperTail(y: number): number {
  if (y <= 4) return Math.exp(-y * y) * ratio(MIDDLE, y);
  const z = 1 / (y * y);
  return (Math.exp(-y * y) / y) * (1 / Math.sqrt(Math.PI) - z * ratio(FAR, z));
}

/**
 * Rational approximations of the quantile. Source: M. J. Wichura, "Algorithm AS 241: The Percentage Points of the Normal
 * Distribution", Applied Statistics 37 (1988), 477–484, routine PPND16. Highest power first.
 */
const CENTRE = {
  over: [
    2.5090809287301226727e3, 3.3430575583588128105e4, 6.7265770927008700853e4, 4.5921953931549871457e4,
    1.3731693765509461125e4, 1.9715909503065514427e3, 1.3314166789178437745e2, 3.387132872796366608,
  ],
  under: [
    5.226495278852854561e3, 2.8729085735721942674e4, 3.930789580009271061e4, 2.1213794301586595867e4,
    5.3941960214247511077e3, 6.871870074920579083e2, 4.2313330701600911252e1, 1,
  ],
};
const SHOULDER = {
  over: [
    7.7454501427834140764e-4, 2.27238449892691845833e-2, 2.4178072517745061177e-1, 1.27045825245236838258,
    3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
  ],
  under: [
    1.05075007164441684324e-9, 5.475938084995344946e-4, 1.51986665636164571966e-2, 1.4810397642748007459e-1,
    6.8976733498510000455e-1, 1.6763848301838038494, 2.05319162663775882187, 1,
  ],
};
const TAIL = {
  over: [
    2.01033439929228813265e-7, 2.71155556874348757815e-5, 1.2426609473880784386e-3, 2.6532189526576123093e-2,
    2.9656057182850489123e-1, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
  ],
  under: [
    2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
    1.48753612908506148525e-2, 1.3692988092273580531e-1, 5.9983220655588793769e-1, 1,
  ],
};

/** The x for which Φ(x) = p. @throws DomainError `chance-out-of-range` unless 0 < p < 1. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw measureError('chance-out-of-range', { chance: p });
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(CENTRE, 0.180625 - q * q);
  const r = Math.sqrt(-Math.log(q < 0 ? p : 1 - p));
  return Math.sign(q) * (r <= 5 ? ratio(SHOULDER, r - 1.6) : ratio(TAIL, r - 5));
}

interface Rational {
  readonly over: readonly number[];
  readonly under: readonly number[];
}

function ratio({ over, under }: Rational, x: number): number {
  return polynomial(over, x) / polynomial(under, x);
}

/** Horner's scheme, highest power first. */
function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const coefficient of coefficients) sum = sum * x + coefficient;
  return sum;
}
