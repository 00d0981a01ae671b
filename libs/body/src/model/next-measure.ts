import type { BodyDimension } from '../body-dimension.ts';
import type { ProfileCovariance } from '../body-profile.ts';

/** How a target moves with each body dimension: mm per mm (weight: per g). What is not named moves nothing. */
export type Sensitivity = Readonly<Partial<Record<BodyDimension, number>>>;

export interface NextMeasureInput {
  /** Covariance of the errors of the profile, mm² (weight: g). */
  readonly covariance: ProfileCovariance;
  /** One for each target of the sheet. */
  readonly sensitivities: readonly Sensitivity[];
  /** Which dimensions may be measured next, with the standard uncertainty of the tape, mm (weight: g). */
  readonly tapeU: Readonly<Partial<Record<BodyDimension, number>>>;
}

export interface NextMeasure {
  readonly name: BodyDimension;
  /** Root of the sum of the targets' variances before and after, mm. */
  readonly before: number;
  readonly after: number;
}

/** A gain smaller than this part of the uncertainty is not worth another trip for the tape (assumed). */
const WORTH = 0.02;

/**
 * The dimension whose measurement would shrink the sum of the targets' variances most. Measuring dimension j with variance r takes (s·C_j)²/(C_jj + r) off a
 * target of sensitivity s (the update of one observation: the same conditioning as the model's). Null where nothing would gain.
 */
export function nextMeasure({
  covariance: { names, matrix },
  sensitivities,
  tapeU,
}: NextMeasureInput): NextMeasure | null {
  const s = sensitivities.map((one) => names.map((name) => one[name] ?? 0));
  const along = s.map((one) => matrix.map((row) => dot(one, row)));
  const before = s.reduce((sum, one, t) => sum + dot(one, along[t]!), 0);
  const gains = names.flatMap((name, j) => {
    const u = tapeU[name];
    if (u === undefined) return [];
    const seen = matrix[j]![j]! + u ** 2;
    return [{ name, gain: along.reduce((sum, one) => sum + one[j]! ** 2, 0) / seen }];
  });
  const best = gains.reduce((a, b) => (b.gain > a.gain ? b : a), { name: null as BodyDimension | null, gain: 0 });
  const after = Math.sqrt(Math.max(0, before - best.gain));
  if (best.name === null || after > (1 - WORTH) * Math.sqrt(before)) return null;
  return { name: best.name, before: Math.sqrt(before), after };
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, i) => sum + value * b[i]!, 0);
