import type { Decisions } from './decisions.ts';
import { S } from './slots.ts';
import type { Steps, Term } from './steps.ts';

const FOUR_MINUS_PI = 4 - Math.PI;
const TWO_PI = 2 * Math.PI;

/** What a garment region kept from the one that fits becomes in the new fabric, over the new layer: flat girth, mm. */
function keptGirth(refWidth: number, layer: number, refLayer: number, change: number): Term[] {
  return [
    [2, refWidth],
    [4, S.thickness],
    [-4, S.refThickness],
    [TWO_PI * layer, S.layer],
    [-TWO_PI * refLayer, S.refLayer],
    [change, S.easeChange],
  ];
}

/** What a girth of the body becomes, besides its ease: what is worn beneath where it reaches, and the fabric's thickness. */
function dressed(girth: number, layer: number): Term[] {
  return [
    [1, girth],
    [TWO_PI * layer, S.layer],
    [4, S.thickness],
    [-4, S.ordinaryThickness],
  ];
}

/** Girths: flat girths to make, then mid girths on the pieces and the room inside. */
export function girthSteps(steps: Steps, d: Decisions): void {
  const { rules, taken, made } = d;
  steps.sum(
    S.easeOfReference,
    [2, S.refChest],
    [-1, S.chest],
    [-TWO_PI, S.refLayer],
    [-4, S.refThickness],
    [4, S.ordinaryThickness],
  );
  if (d.easeFromGarment) steps.sum(S.ease, [1, S.easeOfReference], [1, S.easeChange]);
  else steps.same(S.ease, S.chosenEase);
  steps.smaller(S.hipEase, S.ease, S.hipEaseMost);
  steps.bent(S.armEase, S.ease, rules['upper-arm-negative-ease'], rules['upper-arm-ease']);

  steps.sum(
    S.chestFlat,
    ...(taken.chest ? keptGirth(S.refChest, 1, 1, 1) : [...dressed(S.chest, 1), [1, S.ease] as const]),
  );
  steps.sum(S.hipFlat, ...(taken.hem ? keptGirth(S.refHem, 1, 1, 1) : [...dressed(S.hip, 1), [1, S.hipEase] as const]));
  steps.sum(
    S.armFlat,
    ...(taken.upperArm
      ? keptGirth(S.refSleeveTop, d.layerArm, d.refLayerArm, rules['upper-arm-ease'])
      : [...dressed(S.upperArm, d.layerArm), [1, S.armEase] as const]),
  );
  steps.sum(
    S.wristFlat,
    ...(taken.wrist
      ? keptGirth(S.refCuff, d.layerWrist, d.refLayerWrist, rules['wrist-ease'])
      : [...dressed(S.wrist, d.layerWrist), [1, S.wristRoom] as const, [rules['wrist-ease'], S.ease] as const]),
  );
  if (made.sleeveTop) steps.same(S.sleeveGirth, S.madeSleeveTop);
  else steps.sum(S.sleeveGirth, [1, S.armFlat], [-FOUR_MINUS_PI, S.thickness]);

  midSteps(steps, d);
  steps.sum(S.panel, [0.5, S.mid]);
  const apart = made.back && made.front;
  steps.same(S.backPanel, apart ? S.madeBack : S.panel);
  steps.same(S.frontWholePanel, apart ? S.madeFront : S.panel);
  steps.sum(S.bodyFlat, [1, S.mid], [FOUR_MINUS_PI, S.thickness]);

  const tapered = d.hem === 'tapered' && d.hipReached;
  steps.same(S.hemFlat, tapered ? S.hipFlat : S.bodyFlat);
  steps.sum(S.hemPanel, [0.5, S.hemFlat], [-FOUR_MINUS_PI / 2, S.thickness]);
  steps.same(S.backHem, tapered ? S.hemPanel : S.backPanel);
  steps.same(S.frontWholeHem, tapered ? S.hemPanel : S.frontWholePanel);
  steps.sum(S.chestWidth, [0.5, S.bodyFlat]);
  steps.sum(S.hemWidth, [0.5, S.hemFlat]);

  steps.sum(S.bodyInner, [1, S.bodyFlat], [-4, S.thickness]);
  steps.sum(S.hemInner, [1, S.hemFlat], [-4, S.thickness]);
  const worn: Term[] = [
    [-1, S.chest],
    [-TWO_PI, S.layer],
  ];
  steps.sum(S.easeInTable, [1, S.bodyFlat], ...worn, [-4, S.thickness], [4, S.ordinaryThickness]);
  steps.sum(S.flatEase, [1, S.bodyFlat], [-1, S.chest]);
  steps.sum(S.room, [1, S.bodyInner], ...worn);
}

/** The body's girth on the pieces. One panel made: the other follows it. Both made: it is their sum. */
function midSteps(steps: Steps, { made, hipGoverns }: Decisions): void {
  if (made.back && made.front) steps.sum(S.mid, [1, S.madeBack], [1, S.madeFront]);
  else if (made.back || made.front) steps.sum(S.mid, [2, made.back ? S.madeBack : S.madeFront]);
  else steps.sum(S.mid, [1, hipGoverns ? S.hipFlat : S.chestFlat], [-FOUR_MINUS_PI, S.thickness]);
}
