/** So many times every so many rows. */
export interface Interval {
  readonly rows: number;
  readonly times: number;
}

/**
 * Spreads shaping evenly over rows: 18 times over 120 rows is every 6 rows twelve times and every 8 rows six times.
 * Intervals are even, so that all shaping falls on one side of the work, where there are rows enough, and two rows apart; else
 * one. The shorter come first, and what is left of the rows stays plain. Null where there are more times than rows.
 */
export function spread(times: number, rows: number): Interval[] | null {
  if (times === 0) return [];
  const step = rows >= 2 * times ? 2 : 1;
  const shorter = Math.floor(rows / times / step) * step;
  if (shorter === 0) return null;
  const longerTimes = Math.floor((rows - shorter * times) / step);
  const intervals = [
    { rows: shorter, times: times - longerTimes },
    { rows: shorter + step, times: longerTimes },
  ];
  return intervals.filter((each) => each.times > 0);
}
