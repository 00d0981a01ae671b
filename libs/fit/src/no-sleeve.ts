import type { Decisions } from './decisions.ts';
import { bodyStands } from './made.ts';
import type { SleeveCure } from './messages/no-advice-codes.ts';
import { type Row, S } from './slots.ts';

/** What would give a sleeve where no cap, or raglan, of its width joins an armhole that is known; null where one does. */
export function cureForNoSleeve(v: Row, d: Decisions): SleeveCure | null {
  if (d.silhouette === 'vest' || !isUnjoined(v, d)) return null;
  if (d.made.sleeveTop) return 'narrower-sleeve-again';
  return bodyStands(d) ? 'narrower-sleeve-or-deeper-armhole-again' : 'squared-drop';
}

function isUnjoined(v: Row, { construction }: Decisions): boolean {
  const [rise, edge] =
    construction === 'set-in' ? [v[S.cap]!, v[S.armholeSeam]!] : [v[S.sleeveRaglan]!, v[S.raglanEdge]!];
  const solved = construction === 'set-in' || construction === 'raglan';
  return solved && Number.isNaN(rise) && !Number.isNaN(edge + v[S.sleeveTop]!);
}
