import type { Decisions } from './decisions.ts';
import { raglanTop, sleeveRise } from './raglan.ts';
import { capForSeam, capSeam, capTop } from './set-in.ts';
import { type Row, S } from './slots.ts';

/** The sleeve (model section 6): the way from nape to cuff is kept, so its length follows the body. Needs the body's shape. */
export function workOutSleeve(row: Row, d: Decisions): void {
  const v = row.v;
  const folds = (4 - Math.PI) * v[S.thickness]!;
  const dropped = d.construction === 'drop-shoulder' || d.construction === 'squared-drop';

  const top = row.put(S.sleeveTop, dropped && !d.made.sleeveTop ? 2 * v[S.armhole]! : v[S.sleeveGirth]!);
  // A drop's top is a seam and converts to nothing; the others are girths.
  row.put(S.sleeveTopFlat, (dropped ? top : top + folds) / 2);
  const ruled = Math.min(v[S.wristFlat]! - folds, top);
  const cuff = row.put(S.cuff, d.made.cuff ? v[S.madeCuff]! : ruled);
  row.put(S.cuffFlat, (cuff + folds) / 2);
  row.put(S.cuffInner, cuff - Math.PI * v[S.thickness]!);

  const insideBody = (d.construction === 'raglan' ? v[S.pieceNeckWidth]! : v[S.width]!) / 2;
  const sleeve = row.put(S.sleeve, d.made.sleeve ? v[S.madeSleeve]! : v[S.napeToCuff]! - insideBody);
  row.put(S.reachedNapeToCuff, sleeve + insideBody);
  row.put(S.underarmSeam, sleeve - aboveUnderarm(row, d, top));
}

/** What of the sleeve's length lies above its underarm. */
function aboveUnderarm(row: Row, d: Decisions, top: number): number {
  const v = row.v;
  switch (d.construction) {
    case 'drop-shoulder':
      return 0;
    case 'squared-drop':
      return v[S.inset]!;
    case 'set-in': {
      row.put(S.capTop, 2 * capTop(top, d.rules));
      const cap = row.put(
        S.cap,
        d.made.cap ? v[S.madeCap]! : capForSeam(v[S.armholeSeam]!, top, v[S.bindOff]!, d.rules),
      );
      row.put(S.capSeam, capSeam(cap, top, v[S.bindOff]!, d.rules));
      return cap;
    }
    case 'raglan':
      row.put(S.capTop, 2 * raglanTop(v, d));
      return row.put(S.sleeveRaglan, d.made.sleeveRaglan ? v[S.madeSleeveRaglan]! : sleeveRise(v, d));
  }
}
