import { BODY_DIMENSIONS, type BodyDimension } from './body-dimension.ts';
import type { Body } from './body.ts';
import type { BodyProfile, ProfileValue } from './body-profile.ts';
import { defaultU } from './default-u.ts';
import type { BodyMissing } from './missing-codes.ts';

export type ProfileValues = BodyProfile['values'];

/** What was measured, ready for the arithmetic of fit: the given uncertainty or the default of its way of measuring. */
export function measuredValues({ measures }: Body): ProfileValues {
  const values: Partial<Record<BodyDimension, ProfileValue>> = {};
  for (const { name, value, how, u, from } of measures) {
    values[name] = { value, u: u ?? defaultU(name, how).u, how, from: from ?? { code: 'measured', params: { how } } };
  }
  return values;
}

/** A reason for every dimension that has no value. */
export function missingFrom(
  values: ProfileValues,
  reason: (name: BodyDimension) => BodyMissing,
): BodyProfile['missing'] {
  const missing: Partial<Record<BodyDimension, BodyMissing>> = {};
  for (const name of BODY_DIMENSIONS) if (values[name] === undefined) missing[name] = reason(name);
  return missing;
}
