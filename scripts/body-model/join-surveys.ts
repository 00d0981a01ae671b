import { condition } from '#body';
import { rowCount, type Columns } from './columns.ts';
import { logMoments } from './moments.ts';

/** Two surveys joined, in the order of `names`: what `SexCoefficients` needs of them, unrounded. */
export interface Joined {
  readonly names: readonly string[];
  readonly mean: readonly number[];
  readonly within: readonly number[];
  /** The later survey's mean less the earlier's. */
  readonly gap: readonly number[];
  /** What the surveys' difference adds to the covariance of all rows together: within + between·betweenᵀ. */
  readonly between: readonly number[];
}

/**
 * Nape to cuff is made as a sum, and so given by its parts: it gets a thousandth of its own, about 0.7 mm, to keep the covariance positive definite. How far a tape
 * strays from the sum is a doubt (mappingUncertainties.ts).
 */
const OWN_OF_NAPE_TO_CUFF = 0.001;

/**
 * Joins the survey that has every measure (`full`) with the one that has fewer (`part`); each person counts once. A measure only `full` has follows its
 * regression on the common ones there (the factored likelihood of a monotone missing pattern: Anderson 1957; Little & Rubin, Statistical Analysis with
 * Missing Data, ch. 7), so the result is positive definite.
 *
 * How far a measure of `full` alone would lie elsewhere in the other survey is not known; it is taken halfway between following only stature and weight and
 * following every common measure (assumed).
 */
export function joinSurveys(full: Columns, part: Columns): Joined {
  const common = Object.keys(full).filter((name) => name in part);
  const alone = Object.keys(full).filter((name) => !(name in part));
  const names = [...common, ...alone];
  const n = names.length;
  const c = common.length;
  const fullOnly = logMoments(full, names);
  const inPart = logMoments(part, common);
  const share = rowCount(part) / (rowCount(full) + rowCount(part));

  const within = new Array<number>(n * n).fill(0);
  for (let i = 0; i < c; i++) {
    for (let j = 0; j < c; j++) {
      within[i * n + j] = (1 - share) * fullOnly.covariance[i * n + j]! + share * inPart.covariance[i * c + j]!;
    }
  }
  const cuff = common.indexOf('nape-to-cuff');
  within[cuff * n + cuff]! += OWN_OF_NAPE_TO_CUFF ** 2;

  const gap = Array.from(names, (_, i) => (i < c ? inPart.mean[i]! - fullOnly.mean[i]! : 0));
  const prior = { n, ...fullOnly };
  const onAll = regression(
    prior,
    common.map((_, i) => i).filter((i) => i !== cuff),
    names,
    alone,
  );
  const onSize = regression(prior, [names.indexOf('stature'), names.indexOf('weight')], names, alone);

  alone.forEach((_, a) => {
    const row = c + a;
    gap[row] = (onAll.carry(a, gap) + onSize.carry(a, gap)) / 2;
    for (let j = 0; j < c; j++) {
      const along = Array.from({ length: n }, (__, i) => within[i * n + j]!);
      within[row * n + j] = within[j * n + row] = onAll.carry(a, along);
    }
  });
  alone.forEach((_, a) => {
    const row = c + a;
    for (let b = 0; b < alone.length; b++) {
      const along = Array.from({ length: n }, (__, i) => within[i * n + c + b]!);
      within[row * n + c + b] = onAll.carry(a, along) + onAll.left(a, b);
    }
  });
  return {
    names,
    mean: fullOnly.mean.map((value, i) => value + share * gap[i]!),
    within,
    gap,
    between: gap.map((value) => Math.sqrt(share * (1 - share)) * value),
  };
}

/** The regression of the measures `alone` on those at `on`: how it carries a vector over, and the covariance it leaves. */
function regression(
  prior: { n: number; mean: number[]; covariance: number[] },
  on: readonly number[],
  names: readonly string[],
  alone: readonly string[],
) {
  const zeros = on.map(() => 0);
  const { rest, gain, covariance } = condition(prior, on, zeros, zeros);
  const place = alone.map((name) => rest.indexOf(names.indexOf(name)));
  return {
    carry: (a: number, vector: number[]) =>
      on.reduce((sum, index, k) => sum + gain[place[a]! * on.length + k]! * vector[index]!, 0),
    left: (a: number, b: number) => covariance[place[a]! * rest.length + place[b]!]!,
  };
}
