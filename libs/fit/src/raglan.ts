import type { Decisions } from './decisions.ts';
import { type Row, S } from './slots.ts';

/** A neck is not cut less than this into a raglan front, mm (assumed: no stitch is so small). */
const LEAST_CUT = 0.01;

const bindOffOf = (v: Float64Array, d: Decisions): number => d.rules['raglan-bind-off-share'] * v[S.panel]!;

/** Half of a raglan sleeve's top edge, mm. */
export function raglanTop(v: Float64Array, d: Decisions): number {
  return Math.min(
    d.rules['raglan-top-neck-share'] * v[S.pieceNeckWidth]!,
    d.rules['raglan-top-sleeve-share'] * v[S.sleeveGirth]!,
  );
}

/** How far the body's raglan edge runs towards the neck, mm. */
export function raglanBodyRun(v: Float64Array, d: Decisions): number {
  return (v[S.panel]! - d.rules['raglan-neck-share'] * v[S.pieceNeckWidth]!) / 2 - bindOffOf(v, d);
}

/** The same of the sleeve's, mm. */
export function raglanSleeveRun(v: Float64Array, d: Decisions): number {
  return v[S.sleeveGirth]! / 2 - raglanTop(v, d) - bindOffOf(v, d);
}

/** The body's raglan edge; the front is the back with the neck cut into it. */
export function workOutRaglan(row: Row, d: Decisions): void {
  const v = row.v;
  row.put(S.bindOff, bindOffOf(v, d));
  // A vest's armhole band lies below the raglan, so its piece goes down by as much as the neck band takes off.
  const rise = row.put(S.pieceRaglan, v[S.raglan]! - (d.silhouette === 'vest' ? 0 : v[S.band]!));
  row.put(S.raglanNeck, d.rules['raglan-neck-share'] * v[S.pieceNeckWidth]!);
  const run = row.put(S.raglanRun, raglanBodyRun(v, d));
  row.put(S.raglanEdge, Math.hypot(run, rise));
  // A front neck hardly deeper than the back's, or shallower, is not cut at all: the piece ends there.
  const cut = v[S.pieceFrontNeck]! - v[S.pieceBackNeck]!;
  row.put(S.raglanFrontNeck, cut < LEAST_CUT ? 0 : cut);
}

/** Rise of the sleeve's raglan edge that joins the body's, mm: the body is kept, the sleeve solved. NaN where none does. */
export function sleeveRise(v: Float64Array, d: Decisions): number {
  const sleeve = raglanSleeveRun(v, d);
  return Math.sqrt(v[S.raglanEdge]! ** 2 - sleeve * sleeve);
}
