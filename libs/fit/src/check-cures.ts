import type { BodyDimension } from '#body';
import type { CheckName } from './advice.ts';
import { type Decisions, isDropped } from './decisions.ts';
import { waistOf } from './governed.ts';
import { bodyStands, frontStands, isMade, sleeveStands } from './made.ts';
import type { CheckCode } from './messages/check-codes.ts';
import type { Cure, Opening } from './messages/cure.ts';
import { type Row, S } from './slots.ts';
import type { Field } from './trial.ts';

/**
 * What the cures of a check may depend on; `ease` tells which way of it makes the margin larger, if any does, and whether it is that
 * of the garment that fits; `uncertain` which measure, not taken, alone leaves it uncertain; `offered` whether a remedy changes a
 * field; `holdsSurely` whether a check before it is fine. Margin in mm.
 */
export interface Situation {
  readonly v: Row;
  readonly d: Decisions;
  readonly margin: number;
  readonly ease: { readonly way: 'more' | 'less'; readonly ofGarment: boolean } | null;
  readonly uncertain: BodyDimension | null;
  readonly offered: (field: Field) => boolean;
  readonly holdsSurely: (check: CheckName) => boolean;
}

/** Cures where a condition holds; those that do not help are left out. */
const those = (...cures: readonly (Cure | false)[]): Cure[] => cures.filter((cure) => cure !== false);

/** More ease, or less, where that way helps; with a garment that fits it is told by that one. */
function easeThat(way: 'more' | 'less', ease: Situation['ease']): Cure | false {
  if (ease?.way !== way) return false;
  return ease.ofGarment ? `${way}-ease-than-garment` : `${way}-ease`;
}

/** A neck that opens. A baby’s needs no buttons to come off in a mouth; a raglan vest has no seam there. */
export function openingOf({ construction, figure, silhouette }: Decisions): Opening | null {
  const raglan = construction === 'raglan';
  if (raglan && silhouette === 'vest') return null;
  if (figure === 'baby') return raglan ? 'overlapping-raglan' : 'overlapping-shoulders';
  return raglan ? 'buttoned-raglan' : 'buttoned-shoulder';
}

/** A rib that stretches by less beyond the hand than this passes no hand that a closer cuff would stay above (assumed). */
const RIB_TO_SPARE = 1.05;

/** A body already made has its width and its fabric. */
const widerBody = (d: Decisions, cures: Cure[]): Cure[] => (bodyStands(d) ? ['wider-or-stretchier-body-again'] : cures);

/** A hem that follows the hip, and is narrower than the body above it. */
export const hemIsNarrowest = (v: Row, d: Decisions): boolean =>
  d.hem === 'tapered' && d.hipReached && v[S.hemInner]! < v[S.bodyInner]! - 1e-6;

/** What to do about each check that does not hold, or hardly; always something. What is taken over from a garment that fits has no field of its own. */
export const CURES: Readonly<Record<CheckCode, (at: Situation) => Cure[]>> = {
  'head-through-neck': ({ d, offered }) => {
    const opening = openingOf(d);
    const cures = those(
      offered('frontNeckDepthMm') && 'deeper-neck',
      offered('neckWidthMm') && 'wider-neck',
      opening ?? false,
    );
    return cures.length > 0 ? cures : ['another-neckline'];
  },
  'hand-through-cuff': ({ d }) => {
    if (sleeveStands(d)) return ['wider-cuff-again', 'stretchier-rib-again'];
    return [d.taken.wrist ? 'wider-cuff-than-garment' : 'wider-cuff', 'stretchier-rib'];
  },
  // A rib that gives too little passes no hand that would keep it up; and a cuff that passes none is no closer made.
  'cuff-stays': ({ d, holdsSurely }) => {
    if (sleeveStands(d)) return ['fold-cuff'];
    if (1 + d.ribUsable < RIB_TO_SPARE * d.rules['hand-tucked'] || !holdsSurely('hand-through-cuff'))
      return ['fold-cuff', 'stretchier-and-closer-cuff'];
    return ['closer-cuff', 'fold-cuff'];
  },
  'upper-arm': ({ d, ease }) => {
    if (d.made.sleeveTop) return ['wider-sleeve-again'];
    if (isDropped(d) && bodyStands(d)) return ['deeper-armhole-again'];
    const cures = those(!bodyStands(d) && easeThat('more', ease), d.closeFitting && 'fabric-that-stretches-more');
    if (cures.length > 0) return cures;
    return [d.taken.upperArm ? 'wider-sleeve-than-garment' : 'wider-sleeve'];
  },
  armhole: ({ d }) => {
    if (bodyStands(d)) return ['deeper-armhole-again'];
    if (isMade(S.armhole, d)) return [d.made.cap ? 'higher-cap-again' : 'wider-top-again'];
    return [d.taken.armhole ? 'deeper-armhole-than-garment' : 'deeper-armhole'];
  },
  'over-the-shoulders': ({ v, d, ease }) => [
    ...those(hemIsNarrowest(v, d) && 'straight-hem'),
    ...widerBody(d, those(easeThat('more', ease), 'stretchier-fabric', 'cardigan')),
  ],
  hip: roomForTheHip,
  'negative-ease': ({ d, ease }) => widerBody(d, those(easeThat('more', ease), 'stretchier-fabric')),
  'neck-on-shoulders': narrowerNeck,
  'shoulder-beside-neck': narrowerNeck,
  'body-below-underarm': (at) => {
    const { d, offered } = at;
    if (bodyStands(d)) return ['longer-body-again'];
    return those(
      'longer-body',
      offered('ribMm') && 'shallower-rib-of-body',
      spareArmhole(at) && `shallower-${armholeOf(d)}-of-body`,
    );
  },
  'sleeve-below-underarm': ({ d, ease, offered }) => {
    if (sleeveStands(d)) return ['longer-sleeve-again'];
    return those(!bodyStands(d) && easeThat('less', ease), offered('ribMm') && 'shallower-rib', 'longer-sleeve');
  },
  'under-the-arm': () => ['compare-sweater'],
  'neck-depth': ({ offered }) => those(offered('frontNeckDepthMm') && 'shallower-v', 'wear-something-beneath'),
  'sleeve-taper': (at) => {
    const { v, d } = at;
    if (sleeveStands(d)) return ['longer-or-wider-sleeve-again'];
    return those(
      v[S.cuffHave]! > v[S.cuffNeed]! && 'wider-cuff-for-taper',
      spareArmhole(at) && `shallower-${armholeOf(d)}-for-taper`,
      'longer-sleeve-for-taper',
    );
  },
  'front-and-back': ({ d, margin }) => {
    if (margin >= 0) return ['measure-waist-lengths'];
    return [frontStands(d) ? 'short-rows-again' : 'short-rows'];
  },
  seam: ({ margin }) => (margin < 0 ? ['ease-in', 'one-edge-again'] : ['measure-edges']),
  'raglan-rises': ({ d, ease }) => {
    if (bodyStands(d) || sleeveStands(d)) return ['ease-in', 'body-again'];
    return those(easeThat('more', ease) || easeThat('less', ease), 'another-construction');
  },
  'nape-to-cuff': ({ v, margin }) => {
    if (margin >= 0) return ['try-on'];
    return v[S.cuffPast]! < 0 ? ['add-to-cuff'] : ['fold-made-cuff', 'leave-some-cuff-out'];
  },
};

/** What an armhole is called. */
const armholeOf = ({ construction }: Decisions): 'raglan' | 'armhole' =>
  construction === 'raglan' ? 'raglan' : 'armhole';

/** Whether an armhole is still to be worked, and has room to spare as far as is known. */
const spareArmhole = ({ v, d, holdsSurely }: Situation): boolean =>
  !bodyStands(d) &&
  !isMade(S.armhole, d) &&
  (holdsSurely('armhole') || Number.isNaN(v[S.armholeHave]! - v[S.armholeNeed]!));

/** A wider body or a shorter one; where it is not known how far down the hip is, the measure that tells. */
function roomForTheHip({ v, d, ease }: Situation): Cure[] {
  if (bodyStands(d)) return ['wider-or-shorter-body-again'];
  const unknown = Number.isNaN(waistOf(v, d.rules)) && (d.length === 'custom' || d.taken.length);
  const shorter = d.taken.length ? 'own-length-shorter-than-garment' : 'shorter-length';
  return those(easeThat('more', ease), d.closeFitting && 'stretchier-fabric', unknown ? 'measure-back-waist' : shorter);
}

/** A neck that is too wide, and for the head or the neck itself may have to be deeper for it. */
function narrowerNeck({ d, offered }: Situation): Cure[] {
  if (bodyStands(d)) return ['narrower-neck-again'];
  const cures = those(offered('neckWidthMm') && 'narrower-neck', offered('bandMm') && 'shallower-bands');
  return cures.length > 0 ? cures : ['narrower-and-deeper-neck'];
}
