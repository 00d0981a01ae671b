import { type Decisions, isDropped } from './decisions.ts';
import { bodyStands } from './made.ts';
import { raglanSleeveSteps } from './raglan.ts';
import { capForSeam, capSeam } from './set-in.ts';
import { type Row, S } from './slots.ts';
import type { Steps } from './steps.ts';

const FOLDS = 4 - Math.PI;

/** The sleeve: the way from nape to cuff is kept, so its length follows the body. Needs the body's shape. */
export function sleeveSteps(steps: Steps, d: Decisions): void {
  const { made, construction } = d;
  const dropped = isDropped(d);
  if (dropped && !made.sleeveTop) steps.sum(S.sleeveTop, [2, S.armhole]);
  else steps.same(S.sleeveTop, S.sleeveGirth);
  // A drop's top is a seam and converts to nothing; the others are girths.
  steps.sum(S.sleeveTopFlat, [0.5, S.sleeveTop], [dropped ? 0 : FOLDS / 2, S.thickness]);
  if (made.cuff) {
    steps.same(S.cuff, S.madeCuff);
  } else {
    steps.sum(S.cuffRuled, [1, S.wristFlat], [-FOLDS, S.thickness]);
    steps.atMost(S.cuff, S.cuffRuled, S.sleeveTop);
  }
  steps.sum(S.cuffFlat, [0.5, S.cuff], [FOLDS / 2, S.thickness]);
  steps.sum(S.cuffInner, [1, S.cuff], [-Math.PI, S.thickness]);

  const between = construction === 'raglan' ? S.pieceNeckWidth : S.width;
  if (made.sleeve) {
    steps.same(S.sleeve, S.madeSleeve);
    steps.sum(S.reachedNapeToCuff, [1, S.sleeve], [0.5, between]);
  } else {
    steps.sum(S.sleeve, [1, S.napeToCuff], [-0.5, between]);
    steps.same(S.reachedNapeToCuff, S.napeToCuff);
  }
  underarmSteps(steps, d);
}

/** The seam under the arm: the sleeve less what of it lies above the underarm. */
function underarmSteps(steps: Steps, d: Decisions): void {
  switch (d.construction) {
    case 'drop-shoulder':
      steps.same(S.underarmSeam, S.sleeve);
      break;
    case 'squared-drop':
      steps.sum(S.underarmSeam, [1, S.sleeve], [-1, S.inset]);
      break;
    case 'set-in':
      capSteps(steps, d);
      steps.sum(S.underarmSeam, [1, S.sleeve], [-1, S.cap]);
      break;
    case 'raglan':
      raglanSleeveSteps(steps, d);
      steps.sum(S.underarmSeam, [1, S.sleeve], [-1, S.sleeveRaglan]);
  }
}

function capSteps(steps: Steps, { made, rules }: Decisions): void {
  steps.sum(S.capTop, [rules['cap-top-share'], S.sleeveTop]);
  if (made.cap) steps.same(S.cap, S.madeCap);
  else
    steps.solved(
      S.cap,
      (seam, top, bindOff) => capForSeam(seam, top, bindOff, rules),
      S.armholeSeam,
      S.sleeveTop,
      S.bindOff,
    );
  steps.solved(S.capSeam, (cap, top, bindOff) => capSeam(cap, top, bindOff, rules), S.cap, S.sleeveTop, S.bindOff);
}

/** Why there is no sleeve, and what to change: no cap, or raglan, of its width joins an armhole that is known. Null where one does. */
export function whyNoSleeve(v: Row, d: Decisions): string | null {
  if (d.silhouette === 'vest' || !isUnjoined(v, d)) return null;
  const why = 'No sleeve of this width joins the armhole';
  if (d.made.sleeveTop) return `${why}: work the sleeve again, narrower.`;
  if (bodyStands(d)) return `${why}: make it narrower, or work the body again, with a deeper armhole.`;
  return `${why}: choose a squared drop.`;
}

function isUnjoined(v: Row, { construction }: Decisions): boolean {
  const [rise, edge] =
    construction === 'set-in' ? [v[S.cap]!, v[S.armholeSeam]!] : [v[S.sleeveRaglan]!, v[S.raglanEdge]!];
  const solved = construction === 'set-in' || construction === 'raglan';
  return solved && Number.isNaN(rise) && !Number.isNaN(edge + v[S.sleeveTop]!);
}
