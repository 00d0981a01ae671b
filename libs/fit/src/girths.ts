import type { Decisions } from './decisions.ts';
import { type Row, S } from './slots.ts';

const FOUR_MINUS_PI = 4 - Math.PI;

/** What a garment region kept from the one that fits becomes in the new fabric, over the new layer: flat girth, mm. */
function keptGirth(v: Float64Array, refWidth: number, layer: number, refLayer: number, change: number): number {
  const fabric = 4 * (v[S.thickness]! - v[S.refThickness]!);
  return 2 * refWidth + fabric + 2 * Math.PI * (layer - refLayer) + change;
}

/** Girths of model section 2 and 3: flat girths to make, then mid girths on the pieces and the room inside. */
export function workOutGirths(row: Row, d: Decisions): void {
  const v = row.v;
  const t = v[S.thickness]!;
  const s = v[S.layer]!;
  const sRef = v[S.refLayer]!;
  const change = v[S.easeChange]!;
  const rules = d.rules;
  const allowance = 4 * (t - v[S.ordinaryThickness]!);

  const easeOfReference = row.put(
    S.easeOfReference,
    2 * v[S.refChest]! - v[S.chest]! - 2 * Math.PI * sRef - 4 * (v[S.refThickness]! - v[S.ordinaryThickness]!),
  );
  const E = row.put(S.ease, d.easeFromGarment ? easeOfReference + change : v[S.chosenEase]!);

  const chestFlat = row.put(
    S.chestFlat,
    d.taken.chest ? keptGirth(v, v[S.refChest]!, s, sRef, change) : v[S.chest]! + E + 2 * Math.PI * s + allowance,
  );
  const hipFlat = row.put(
    S.hipFlat,
    d.taken.hem
      ? keptGirth(v, v[S.refHem]!, s, sRef, change)
      : v[S.hip]! + Math.min(E, v[S.hipEaseMost]!) + 2 * Math.PI * s + allowance,
  );
  const armShare = E < 0 ? rules['upper-arm-negative-ease'] : rules['upper-arm-ease'];
  const armFlat = row.put(
    S.armFlat,
    d.taken.upperArm
      ? keptGirth(v, v[S.refSleeveTop]!, s * d.layerArm, sRef * d.refLayerArm, rules['upper-arm-ease'] * change)
      : v[S.upperArm]! + armShare * E + 2 * Math.PI * s * d.layerArm + allowance,
  );
  row.put(
    S.wristFlat,
    d.taken.wrist
      ? keptGirth(v, v[S.refCuff]!, s * d.layerWrist, sRef * d.refLayerWrist, rules['wrist-ease'] * change)
      : v[S.wrist]! + v[S.wristRoom]! + rules['wrist-ease'] * E + 2 * Math.PI * s * d.layerWrist + allowance,
  );
  row.put(S.sleeveGirth, d.made.sleeveTop ? v[S.madeSleeveTop]! : armFlat - FOUR_MINUS_PI * t);

  const planned = (d.hipGoverns ? hipFlat : chestFlat) - FOUR_MINUS_PI * t;
  const mid = row.put(S.mid, d.made.back || d.made.front ? madeMid(v, d) : planned);
  row.put(S.panel, mid / 2);
  const apart = d.made.back && d.made.front;
  row.put(S.backPanel, apart ? v[S.madeBack]! : v[S.panel]!);
  row.put(S.frontWholePanel, apart ? v[S.madeFront]! : v[S.panel]!);
  const bodyFlat = row.put(S.bodyFlat, mid + FOUR_MINUS_PI * t);
  const tapered = d.hem === 'tapered' && d.hipReached;
  const hemFlat = row.put(S.hemFlat, tapered ? hipFlat : bodyFlat);
  const hemPanel = row.put(S.hemPanel, (hemFlat - FOUR_MINUS_PI * t) / 2);
  row.put(S.backHem, tapered ? hemPanel : v[S.backPanel]!);
  row.put(S.frontWholeHem, tapered ? hemPanel : v[S.frontWholePanel]!);

  row.put(S.chestWidth, bodyFlat / 2);
  row.put(S.hemWidth, hemFlat / 2);

  const bodyInner = row.put(S.bodyInner, bodyFlat - 4 * t);
  row.put(S.hemInner, hemFlat - 4 * t);
  const worn = v[S.chest]! + 2 * Math.PI * s;
  row.put(S.easeInTable, bodyFlat - worn - allowance);
  row.put(S.flatEase, bodyFlat - v[S.chest]!);
  row.put(S.room, bodyInner - worn);
}

/** One panel made: the other follows it. Both made: the girth is their sum. */
function madeMid(v: Float64Array, d: Decisions): number {
  if (d.made.back && d.made.front) return v[S.madeBack]! + v[S.madeFront]!;
  return 2 * (d.made.back ? v[S.madeBack]! : v[S.madeFront]!);
}
