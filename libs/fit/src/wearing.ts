import { type Decisions, isDropped } from './decisions.ts';
import { seamsCompare, seamSteps } from './seams.ts';
import { S } from './slots.ts';
import type { Steps } from './steps.ts';

/**
 * Need and have of every check (model section 8), as numbers; which of them apply and what they mean is said elsewhere.
 * A close-fitting garment's main fabric stretches at arm, armhole and hip.
 */
export function wearingSteps(steps: Steps, d: Decisions): void {
  if (d.silhouette !== 'vest') sleeveWorn(steps, d);
  neckWorn(steps, d);
  bodyWorn(steps, d);
  if (seamsCompare(d)) seamSteps(steps, d);
  else if (d.construction === 'raglan' && d.silhouette !== 'vest') raglanDepths(steps, d);
}

/** What a ratio is taken over is no less than this, mm: with nothing there it would be boundless. */
const LEAST = 1;

/** How many times its length a fabric reaches: where a close-fitting garment's main fabric stretches, and where it need not. */
const closeStretch = (d: Decisions): number => (d.closeFitting ? 1 + d.mainUsable : 1);

/** How much two lengths differ, whichever is the longer; of equals it is as unsure as of any others. */
function differing(steps: Steps, slot: number, longer: number): void {
  steps.bent(slot, longer, -1, 1);
}

function sleeveWorn(steps: Steps, d: Decisions): void {
  const stretch = closeStretch(d);
  steps.sum(S.handNeed, [d.rules['hand-tucked'], S.hand]);
  steps.sum(S.handHave, [1 + d.ribUsable, S.cuffInner]);
  steps.same(S.cuffNeed, S.cuffInner);
  steps.same(S.cuffHave, S.hand);
  steps.sum(S.armNeed, [1, S.upperArm], [2 * Math.PI * d.layerArm, S.layer]);
  steps.sum(S.armHave, [stretch, S.sleeveTop], [-stretch * (isDropped(d) ? 4 : Math.PI), S.thickness]);

  steps.sum(S.sleeveBelowNeed, [1, S.rib], [1, S.sleeveBelow]);
  steps.same(S.sleeveBelowHave, S.underarmSeam);
  // The arm's own length below the underarm of the garment, against the sleeve's.
  steps.sum(
    S.underArmLonger,
    [1, S.underarmSeam],
    [-1, S.underarm],
    [1, S.length],
    [-1, S.bodyToUnderarm],
    [-1, S.scye],
  );
  differing(steps, S.underArmNeed, S.underArmLonger);
  steps.always(S.underArmHave, d.rules['underarm-difference-most']);
  steps.solved(
    S.taperNeed,
    (top, cuff, seam, rib) => (top - cuff) / 2 / Math.max(seam - rib, LEAST),
    S.sleeveTop,
    S.cuff,
    S.underarmSeam,
    S.rib,
  );
  steps.always(S.taperHave, d.rules['sleeve-taper-most']);
  steps.sum(S.cuffPast, [1, S.reachedNapeToCuff], [-1, S.napeToCuff]);
  differing(steps, S.cuffReachNeed, S.cuffPast);
  steps.always(S.cuffReachHave, d.rules['length-room']);
}

function neckWorn(steps: Steps, d: Decisions): void {
  steps.same(S.headNeed, S.head);
  steps.sum(S.ribPasses, [1 + d.ribUsable, S.neckOpening]);
  if (d.mainMeasured) {
    steps.sum(S.edgePasses, [1 + d.mainUsable, S.neckEdge]);
    steps.smaller(S.headHave, S.ribPasses, S.edgePasses);
  } else steps.same(S.headHave, S.ribPasses);

  steps.sum(S.neckCarriedBare, [1, S.acrossBack], [-1, S.neckFromShoulders]);
  if (d.construction === 'raglan') {
    steps.same(S.neckOnNeed, S.neckWidth);
    steps.same(S.neckOnHave, S.neckCarriedBare);
  } else scarcerOnShoulders(steps);

  steps.same(S.neckDepthNeed, S.frontNeck);
  steps.sum(S.neckDepthHave, [1, S.scye], [1, S.bustLine], [1, S.backNeck]);
}

/** The neck stays on the shoulders where both are kept: width beside it, and a shoulder to carry it. The scarcer is told. */
function scarcerOnShoulders(steps: Steps): void {
  steps.sum(S.spareBesideNeck, [1, S.neckCarriedBare], [-1, S.neckWidth]);
  steps.sum(S.spareOfShoulder, [1, S.pieceShoulderWidth], [-1, S.shoulderLeast]);
  const scarcer = (beside: number, shoulder: number, ofNeck: number, ofShoulder: number): number =>
    shoulder < beside ? ofShoulder : ofNeck;
  steps.solved(S.neckOnNeed, scarcer, S.spareBesideNeck, S.spareOfShoulder, S.neckWidth, S.shoulderLeast);
  steps.solved(S.neckOnHave, scarcer, S.spareBesideNeck, S.spareOfShoulder, S.neckCarriedBare, S.pieceShoulderWidth);
}

function bodyWorn(steps: Steps, d: Decisions): void {
  const { rules } = d;
  const stretch = closeStretch(d);
  const layer = 2 * Math.PI;
  steps.sum(S.armholeNeed, [1, S.scyeGirth], [layer * d.layerArm, S.layer]);
  if (d.construction !== 'raglan')
    steps.sum(S.armholeHave, [2 * stretch, S.armholeSeam], [-stretch * Math.PI, S.thickness]);

  steps.sum(S.overMean, [0.5, S.chest], [0.5, S.shoulderGirth]);
  steps.larger(S.overWidest, S.chest, S.overMean);
  steps.sum(S.overNeed, [1, S.overWidest], [layer, S.layer]);
  steps.smaller(S.narrowestInner, S.bodyInner, S.hemInner);
  steps.sum(S.overHave, [1 + d.mainUsable, S.narrowestInner]);
  steps.sum(S.hipNeed, [1, S.hip], [layer, S.layer]);
  steps.sum(S.hipHave, [stretch, S.hemInner]);
  steps.solved(
    S.stretchNeed,
    (chest, beneath, inner) => (chest + layer * beneath) / Math.max(inner, LEAST) - 1,
    S.chest,
    S.layer,
    S.bodyInner,
  );
  steps.always(S.stretchHave, d.mainUsable);

  steps.sum(S.bodyBelowNeed, [1, S.rib], [1, S.bodyBelow]);
  steps.same(S.bodyBelowHave, S.pieceBodyToUnderarm);
  steps.sum(S.frontBackNeed, [1, S.frontWaist], [-1, S.backWaist]);
  steps.always(S.frontBackHave, rules['front-longer-most']);
}

/** A raglan's own two depths, where nothing was made. */
function raglanDepths(steps: Steps, d: Decisions): void {
  steps.sum(S.sleeveRisesMore, [1, S.sleeveRaglan], [-1, S.pieceRaglan]);
  differing(steps, S.seamNeed, S.sleeveRisesMore);
  steps.sum(S.seamHave, [d.rules['raglan-difference-most'], S.pieceRaglan]);
}
