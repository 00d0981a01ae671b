import type { Plausibility } from './plausibility.ts';
import { repairsOf, type Repair, type SlipCode, type Typed } from './repairs.ts';

/** What is most likely wrong: a repair, or one value that none explains (its `value` null). */
export interface Finding {
  readonly code: SlipCode;
  readonly changes: readonly { readonly index: number; readonly value: number | null }[];
}

/**
 * A repair must bring the squared distance down by `fall` at least and its values to within `z`; a value that no repair explains must lie `z` standard deviations off.
 * So at most 1 in 100 bodies
 * of the surveys gets a question (tests/external/body-model/slips.test.ts).
 */
const ENOUGH = { fall: 7.5, z: 3.5 };

/** The finding that explains the values best, or null where nothing is suspicious. Values `asked` about already are left alone. */
export function findingOf(
  plausibility: Plausibility,
  typed: readonly Typed[],
  asked: (index: number) => boolean,
): Finding | null {
  // However one value alone is changed, the squared distance falls by its z² at most.
  const alone = [...plausibility.z.keys()].filter((index) => plausibility.z[index]! ** 2 > ENOUGH.fall);
  const falls = repairsOf(typed, alone)
    .filter(({ changes }) => !changes.some(({ index }) => asked(index)))
    .map((repair) => ({ repair, ...afterRepair(plausibility, typed, repair) }))
    .filter(({ z }) => z <= ENOUGH.z);
  const best = falls.reduce((a, b) => (b.fall > a.fall ? b : a), { repair: null as Repair | null, fall: ENOUGH.fall });
  if (best.repair !== null) return best.repair;
  const far = plausibility.z.reduce(
    (a, z, index) => (Math.abs(z) > Math.abs(a.z) && !asked(index) ? { index, z } : a),
    {
      index: -1,
      z: ENOUGH.z,
    },
  );
  return far.index === -1 ? null : { code: 'unlikely', changes: [{ index: far.index, value: null }] };
}

const afterRepair = (plausibility: Plausibility, typed: readonly Typed[], { changes }: Repair) =>
  plausibility.after(changes.map(({ index, value }) => ({ index, by: Math.log(value / typed[index]!.value) })));
