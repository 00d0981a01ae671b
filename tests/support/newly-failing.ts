import type { Advice, CheckName, Verdict } from '#fit';

/** Those of comfort, which draw nothing in and keep no remedy from being offered; and seams, which compare what was made. */
export const BESIDES: readonly CheckName[] = [
  'seam',
  'cuff-stays',
  'under-the-arm',
  'neck-depth',
  'sleeve-taper',
  'front-and-back',
  'along-the-top',
  'raglan-slope',
];

/** Checks with one of these verdicts in `before` that do not hold in `after`, each with by how much. */
export function newlyFailing(
  before: Advice,
  after: Advice,
  verdicts: readonly Verdict[] = ['fine', 'tight'],
): string[] {
  return after.checks.flatMap(({ check, margin }) => {
    const then = before.checks.find((each) => each.check === check)!;
    if (!verdicts.includes(then.verdict) || BESIDES.includes(check) || margin === undefined) return [];
    return margin < -1e-6 ? [`${check} by ${margin}`] : [];
  });
}
