import type { Decisions } from './decisions.ts';
import { raglanSteps } from './raglan.ts';
import { armholeForSeam, armholeSeam, capSeam } from './set-in.ts';
import { S } from './slots.ts';
import type { Steps } from './steps.ts';

/** Width between the armhole edges and the inset on each side, before any vest's bands. A raglan has neither. */
export function widthSteps(steps: Steps, d: Decisions): void {
  const { rules, taken } = d;
  const share = rules['across-back-ease'];
  if (taken.acrossBack) steps.sum(S.acrossGarment, [1, S.refCrossBack], [share, S.easeChange]);
  else steps.sum(S.acrossGarment, [1, S.acrossBack], [share, S.ease]);
  switch (d.construction) {
    case 'drop-shoulder':
      steps.same(S.width, S.panel);
      steps.sum(S.inset, [0.5, S.panel], [-0.5, S.width]);
      break;
    case 'squared-drop': {
      const across = taken.acrossBack ? S.acrossGarment : S.acrossBack;
      // A squared drop that fits has its own inset: what its panel is wider than it is across.
      const own = taken.acrossBack && d.refConstruction === 'squared-drop';
      const spare = own ? 0.5 : rules['squared-inset-share'];
      steps.sum(S.insetSpare, [spare, S.panel], [-spare, across]);
      steps.bent(S.insetWanted, S.insetSpare, 0, 1);
      steps.smaller(S.inset, S.insetWanted, S.squaredInsetMost);
      steps.sum(S.width, [1, S.panel], [-2, S.inset]);
      break;
    }
    case 'set-in':
      steps.sum(S.widthMost, [1, S.panel], [-2, S.setInInsetLeast]);
      steps.smaller(S.width, S.acrossGarment, S.widthMost);
      steps.sum(S.inset, [0.5, S.panel], [-0.5, S.width]);
      break;
    case 'raglan':
  }
}

/** Armhole depth, or a raglan's depth from the nape: ruled, made, or fitted to a sleeve that is made already. */
export function armholeSteps(steps: Steps, d: Decisions): void {
  if (d.construction === 'raglan') {
    raglanSteps(steps, d);
    return;
  }
  if (d.construction === 'set-in') bindOffSteps(steps, d);
  armholeDepthSteps(steps, d);
  switch (d.construction) {
    case 'set-in':
      steps.solved(
        S.armholeSeam,
        (armhole, inset, bindOff) => armholeSeam(armhole, inset, bindOff, d.rules),
        S.armhole,
        S.inset,
        S.bindOff,
      );
      break;
    case 'squared-drop':
      steps.sum(S.armholeSeam, [1, S.armhole], [1, S.inset]);
      break;
    case 'drop-shoulder':
      steps.same(S.armholeSeam, S.armhole);
  }
}

/** Underarm bind-off of a set-in's body and sleeve: a share of the inset, at most a share of half the sleeve's top. */
function bindOffSteps(steps: Steps, { silhouette, rules }: Decisions): void {
  const vest = silhouette === 'vest';
  steps.sum(vest ? S.bindOff : S.bindOffOfInset, [rules['bind-off-inset-share'], S.inset]);
  if (vest) return;
  steps.sum(S.bindOffMost, [rules['bind-off-sleeve-share'] / 2, S.sleeveGirth]);
  steps.smaller(S.bindOff, S.bindOffOfInset, S.bindOffMost);
}

function armholeDepthSteps(steps: Steps, d: Decisions): void {
  const { made, rules } = d;
  if (made.armhole) {
    steps.sum(S.armhole, [1, S.madeArmhole], [d.silhouette === 'vest' ? -1 : 0, S.band]);
  } else if (made.cap) {
    steps.solved(
      S.armhole,
      (cap, top, inset, bindOff) => armholeForSeam(capSeam(cap, top, bindOff, rules), inset, bindOff, rules),
      S.madeCap,
      S.sleeveGirth,
      S.inset,
      S.bindOff,
    );
  } else if (d.construction === 'set-in') {
    steps.same(S.armhole, S.armholeBase);
  } else if (made.sleeveTop) {
    steps.sum(S.armhole, [0.5, S.madeSleeveTop]);
  } else {
    steps.sum(S.armholeRuled, [1, S.armholeBase], [1, S.armholeDeeper]);
    steps.sum(S.armholeLeast, [0.5, S.armFlat]);
    steps.atLeast(S.armhole, S.armholeRuled, S.armholeLeast);
  }
}

/** Heights and widths of the body, finished and on the pieces. Needs neck, widths, armhole and length. */
export function bodySteps(steps: Steps, d: Decisions): void {
  const raglan = d.construction === 'raglan';
  const bands = d.silhouette === 'vest' ? 1 : 0;

  if (!raglan) {
    steps.sum(S.pieceWidth, [1, S.width], [-2 * bands, S.band]);
    steps.sum(S.shoulderWidth, [0.5, S.width], [-0.5, S.pieceNeckWidth]);
    steps.sum(S.pieceShoulderWidth, [0.5, S.pieceWidth], [-0.5, S.pieceNeckWidth]);
    steps.sum(S.pieceInset, [1, S.inset], [bands, S.band]);
    steps.sum(S.backWidth, [1, S.backPanel], [-2, S.pieceInset]);
    steps.sum(S.frontWidth, [1, S.frontWholePanel], [-2, S.pieceInset]);
    steps.sum(S.backShoulder, [0.5, S.backWidth], [-0.5, S.pieceNeckWidth]);
    steps.sum(S.frontShoulder, [0.5, S.frontWidth], [-0.5, S.pieceNeckWidth]);
    steps.sum(S.pieceArmhole, [1, S.armhole], [bands, S.band]);
  }
  const fall = d.construction === 'set-in' ? d.rules['shoulder-fall-share'] : 0;
  steps.sum(S.shoulderFall, [fall, S.shoulderWidth]);
  if (raglan) steps.sum(S.underarmBelowTop, [1, S.raglan], [1, S.backNeck]);
  else steps.sum(S.underarmBelowTop, [1, S.shoulderFall], [1, S.armhole]);
  if (d.made.bodyToUnderarm)
    steps.sum(S.length, [1, S.madeBodyToUnderarm], [bands, S.band], [1, S.underarmBelowTop], [-1, S.backNeck]);
  steps.sum(S.shoulderToHem, [1, S.length], [1, S.backNeck]);
  steps.sum(S.bodyToUnderarm, [1, S.shoulderToHem], [-1, S.underarmBelowTop]);
  steps.sum(S.pieceBodyToUnderarm, [1, S.bodyToUnderarm], [-bands, S.band]);
  steps.sum(S.pieceLength, [1, S.length], [-1, S.band]);
  if (raglan || d.construction === 'set-in') steps.sum(S.pieceBindOff, [1, S.bindOff], [bands, S.band]);
  if (d.silhouette === 'cardigan') openFrontSteps(steps, raglan);
}

/** A half front: half a whole one, and half the overlap, less the band that is worked to its edge. */
function openFrontSteps(steps: Steps, raglan: boolean): void {
  const half = (slot: number, whole: number): void =>
    steps.sum(slot, [0.5, whole], [0.5, S.overlap], [-1, S.frontBand]);
  half(S.frontPanel, S.frontWholePanel);
  half(S.frontHem, S.frontWholeHem);
  half(S.frontHalfNeck, raglan ? S.raglanNeck : S.pieceNeckWidth);
  if (raglan) steps.sum(S.frontEdge, [1, S.pieceLength], [-1, S.raglanFrontNeck]);
  else steps.sum(S.frontEdge, [1, S.shoulderToHem], [-1, S.pieceFrontNeck]);
}
