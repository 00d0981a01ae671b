import type { SizeRow } from '../sizes/published-sizes.ts';

/**
 * Nape to cuff worked out from a child's or a baby's arm, mm: half the back, the arm to the underarm, and the way from the
 * underarm up to the shoulder as 0.6 of the scye depth (assumed).
 */
export const NAPE_TO_CUFF_PARTS = { 'across-back': 0.5, 'underarm-length': 1, 'scye-depth': 0.6 } as const;

/**
 * How much longer than that a printed nape to cuff may be, mm. The children's rows from 4 to 16 are 13 to 32 longer (mean 23.7,
 * SD 7.6), size 2 is 59: the limit stands about three SD above the mean. The adults' rows lie between 22 shorter and 29 longer.
 */
const LONGER_AT_MOST = 45;

/** Whether a row's nape to cuff can be that of its own arm; true where the row lacks a part to judge by. */
export function napeToCuffFits({ mm }: SizeRow): boolean {
  const printed = mm['nape-to-cuff'];
  const [back, arm, scye] = [mm['across-back'], mm['underarm-length'], mm['scye-depth']];
  if (!printed || !back || !arm || !scye) return true;
  const parts = NAPE_TO_CUFF_PARTS;
  const worked = parts['across-back'] * back.mid + parts['underarm-length'] * arm.mid + parts['scye-depth'] * scye.mid;
  return printed.mid - worked <= LONGER_AT_MOST;
}
