export type { CountableSheet, SheetToCount } from './countable-sheet.ts';
export { PARITIES, type CountsRequest, type Gauge, type Multiple, type Parity } from './counts-request.ts';
export type { CountsErrors } from './counts-errors.ts';
export { GAUGE_LIMITS, LARGEST_MULTIPLE } from './check-request.ts';
export type * from './counts.ts';
export { countsOf } from './counts-of.ts';
export { spread, type Interval } from './spread.ts';
export { halvesOf, type Halves } from './halves.ts';
