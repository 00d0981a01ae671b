import type { BodyDimension } from '../body-dimension.ts';
import type { ProfileValue } from '../body-profile.ts';
import type { ProfileValues } from '../profile-values.ts';

/** What a chest beyond a table's end makes of that end's row: girths go with the chest, lengths with its root (assumed). */
const power = (name: BodyDimension): number => (name.endsWith('-girth') ? 1 : 1 / 2);

/** Half of what a value moved, and this part of it, are in doubt (assumed). */
const SHARE = 0.03;

/** The end row of a table for a body beyond that end, `ratio` times as large round the chest: wider, and marked as outside what was published. */
export function beyondTable(row: ProfileValues, ratio: number): ProfileValues {
  const one = ([name, known]: [string, ProfileValue]): [string, ProfileValue] => {
    const value = known.value * ratio ** power(name as BodyDimension);
    const u = Math.hypot(known.u, (value - known.value) / 2, SHARE * value);
    return [name, { ...known, value, u, outsideSurveys: true }];
  };
  return Object.fromEntries(Object.entries(row).map(one));
}
