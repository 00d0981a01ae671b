import type { Body, Figure } from './body.ts';
import type { BodyDimension } from './body-dimension.ts';
import type { BodyProfile, ProfileValue } from './body-profile.ts';
import type { Estimator } from './estimator.ts';
import type { BodyMissing } from './missing-codes.ts';
import { missingFrom, type ProfileValues } from './profile-values.ts';
import { rowProfileValues } from './row-profile-values.ts';
import { rowForChest } from './sizes/row-for-chest.ts';
import { sizeTable } from './sizes/size-tables.ts';

type Adult = Exclude<Figure, 'child' | 'baby'>;

/** What an estimator makes of the dimensions that were not measured, or why it cannot. */
export function estimatedProfile(
  figure: Adult,
  ageYears: Body['ageYears'],
  measured: ProfileValues,
  estimator: Estimator,
  wanted: readonly BodyDimension[] | undefined,
): BodyProfile {
  const known = (Object.keys(measured) as BodyDimension[]).map((name) => {
    const { value, u } = measured[name]!;
    return { name, value, u };
  });
  const { estimates, covariance, from, notes } = estimator.estimate({
    figure,
    ageYears,
    known,
    ...(wanted && { wanted }),
  });
  const estimated: Partial<Record<BodyDimension, ProfileValue>> = {};
  const reasons = new Map<BodyDimension, BodyMissing>();
  for (const estimate of estimates) {
    if ('missing' in estimate) reasons.set(estimate.name, estimate.missing);
    else {
      const { name, value, u, outsideSurveys } = estimate;
      estimated[name] = { value, u, how: 'estimated', from, ...(outsideSurveys && { outsideSurveys }) };
    }
  }
  const values = Object.assign({}, measured, estimated);
  const missing = missingFrom(values, (name) => reasons.get(name) ?? notEstimated(name, wanted));
  return { figure, ageYears, values, covariance, missing, notes };
}

const notEstimated = (name: BodyDimension, wanted: readonly BodyDimension[] | undefined): BodyMissing => ({
  code: wanted === undefined || wanted.includes(name) ? 'not-estimated' : 'not-asked-for',
  params: {},
});

/**
 * The fall-back without an estimator: the published table's row by chest. No table has an adult's neck base, wrist, hand, head, shoulder or
 * scye girth; they stay missing.
 */
export function tableProfile(figure: Adult, ageYears: Body['ageYears'], measured: ProfileValues): BodyProfile {
  const chest = measured['chest-girth'];
  if (chest === undefined) {
    const missing = missingFrom(measured, () => ({ code: 'chest-needed', params: {} }));
    return { figure, ageYears, values: measured, covariance: null, missing, notes: [] };
  }
  const { row, note } = rowForChest(figure, chest.value);
  const values = row === null ? measured : { ...rowProfileValues(row, 'chest'), ...measured };
  const reason: BodyMissing =
    row === null
      ? { code: 'no-size-row', params: { note } }
      : { code: 'not-in-table', params: { table: sizeTable(row.table).label } };
  return { figure, ageYears, values, covariance: null, missing: missingFrom(values, () => reason), notes: [note] };
}
