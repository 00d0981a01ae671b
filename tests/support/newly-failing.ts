import type { Advice, CheckName } from '#fit';

/** Those of comfort, which draw nothing in and keep no remedy from being offered; and seams, which compare what was made. */
const BESIDES: readonly CheckName[] = [
  'seam',
  'cuff-stays',
  'under-the-arm',
  'neck-depth',
  'sleeve-taper',
  'front-and-back',
];

/** Checks that hold in `before` and no longer do in `after`; a length that comes to reach the hip, or no more, is another design. */
export function newlyFailing(before: Advice, after: Advice): string[] {
  const reachesHip = ({ checks }: Advice): boolean => checks.find(({ check }) => check === 'hip')!.verdict !== 'n/a';
  if (before.design.construction !== after.design.construction || reachesHip(before) !== reachesHip(after)) return [];
  return before.checks.flatMap(({ check, verdict }) => {
    const now = after.checks.find((each) => each.check === check)!;
    const held = verdict === 'fine' || verdict === 'tight';
    if (!held || BESIDES.includes(check) || now.margin === undefined) return [];
    return now.margin < -1e-6 ? [`${check} by ${now.margin}`] : [];
  });
}
