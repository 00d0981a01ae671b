import { normalCdf } from '#measure';
import type { CheckName } from './advice.ts';
import type { Decisions } from './decisions.ts';
import type { WishCode } from './messages/wish-codes.ts';
import { seamsCompare } from './seams.ts';
import { type Row, S } from './slots.ts';

/** One check: where its need and have are, when it applies, and what it says. */
export interface CheckRule {
  readonly check: CheckName;
  readonly need: number;
  readonly have: number;
  readonly applies: (d: Decisions, v: Row) => boolean;
  /** A comfort check is tight at worst and draws nothing in. */
  readonly comfort: boolean;
  /** A girth: the making adds its share of `have` to the uncertainty. */
  readonly girth: boolean;
  /** The main fabric's stretch counts, so that without a measured one it may be unknown. */
  readonly stretches: (d: Decisions) => boolean;
  /** The dimension of the sheet it is about, and the two wishes that collide where it fails. */
  readonly dimension: string;
  readonly wishes: readonly [WishCode, WishCode];
}

const hasSleeve = (d: Decisions): boolean => d.silhouette !== 'vest';
const pulledOn = (d: Decisions): boolean => d.silhouette !== 'cardigan';
const never = (): boolean => false;
const always = (): boolean => true;
const whenClose = (d: Decisions): boolean => d.closeFitting;
const sleeveSolved = (d: Decisions): boolean => d.construction === 'set-in' || d.construction === 'raglan';

function rule(
  check: CheckName,
  need: number,
  have: number,
  dimension: string,
  wishes: readonly [WishCode, WishCode],
  rest: Partial<CheckRule> = {},
): CheckRule {
  const plain = { applies: always, comfort: false, girth: false, stretches: never };
  return { check, need, have, dimension, wishes, ...plain, ...rest };
}

/** All checks, in the order in which a garment is put on and worn. */
export const CHECK_RULES: readonly CheckRule[] = [
  rule('head-through-neck', S.headNeed, S.headHave, 'neck-opening', ['head-passes', 'neck-as-chosen'], {
    applies: pulledOn,
    girth: true,
  }),
  rule('hand-through-cuff', S.handNeed, S.handHave, 'cuff-width', ['hand-passes', 'close-cuff'], {
    applies: hasSleeve,
    girth: true,
  }),
  rule('cuff-stays', S.cuffNeed, S.cuffHave, 'cuff-width', ['cuff-stays', 'wide-cuff'], {
    applies: hasSleeve,
    girth: true,
    comfort: true,
  }),
  rule('upper-arm', S.armNeed, S.armHave, 'sleeve-top-width', ['upper-arm-room', 'close-sleeve'], {
    applies: hasSleeve,
    girth: true,
    stretches: whenClose,
  }),
  rule('armhole', S.armholeNeed, S.armholeHave, 'armhole-depth', ['shoulder-room', 'shallow-armhole'], {
    applies: (d) => d.construction !== 'raglan',
    girth: true,
    stretches: whenClose,
  }),
  rule('over-the-shoulders', S.overNeed, S.overHave, 'chest-width', ['goes-over-shoulders', 'close-ease'], {
    applies: pulledOn,
    girth: true,
    stretches: always,
  }),
  rule('hip', S.hipNeed, S.hipHave, 'hem-width', ['hip-room', 'close-hem'], {
    applies: (d) => d.hipReached,
    girth: true,
    stretches: whenClose,
  }),
  rule('negative-ease', S.stretchNeed, S.stretchHave, 'chest-width', ['smaller-than-body', 'fabric-stretch'], {
    applies: (_, v) => !(v[S.stretchNeed]! <= 0),
    stretches: always,
  }),
  rule('neck-on-shoulders', S.neckOnNeed, S.neckOnHave, 'neck-width', ['neck-stays-on', 'wide-neck'], {}),
  rule(
    'body-below-underarm',
    S.bodyBelowNeed,
    S.bodyBelowHave,
    'body-to-underarm',
    ['body-below-underarm', 'short-length'],
    {},
  ),
  rule(
    'sleeve-below-underarm',
    S.sleeveBelowNeed,
    S.sleeveBelowHave,
    'underarm-seam',
    ['sleeve-below-underarm', 'short-sleeve'],
    {
      applies: hasSleeve,
    },
  ),
  rule(
    'under-the-arm',
    S.underArmNeed,
    S.underArmHave,
    'underarm-seam',
    ['arm-length-below-underarm', 'armhole-as-is'],
    {
      applies: (d) => hasSleeve(d) && sleeveSolved(d),
      comfort: true,
    },
  ),
  rule('neck-depth', S.neckDepthNeed, S.neckDepthHave, 'front-neck-depth', ['v-above-chest', 'deep-v'], {
    applies: (d) => d.neckline === 'v',
    comfort: true,
  }),
  rule('sleeve-taper', S.taperNeed, S.taperHave, 'sleeve-top-width', ['gentle-taper', 'wide-top'], {
    applies: hasSleeve,
    comfort: true,
  }),
  rule(
    'front-and-back',
    S.frontBackNeed,
    S.frontBackHave,
    'shoulder-to-hem',
    ['front-stays-down', 'equal-front-and-back'],
    {
      comfort: true,
    },
  ),
  rule('seam', S.seamNeed, S.seamHave, 'width', ['edges-join', 'pieces-as-made'], {
    applies: (d) => seamsCompare(d) || (hasSleeve(d) && d.construction === 'raglan'),
  }),
  rule('nape-to-cuff', S.cuffReachNeed, S.cuffReachHave, 'neck-to-cuff', ['nape-to-cuff', 'sleeve-as-made'], {
    applies: (d) => d.made.sleeve,
  }),
];

/** What the making adds to the uncertainty of a check's margin: a share of a girth, or of the stretch that is asked of it. */
function makingOf(rule: CheckRule, v: Row, { rules }: Decisions): number {
  if (rule.girth) return rules.making * v[rule.have]!;
  return rule.check === 'negative-ease' ? rules.making * (1 + v[rule.need]!) : 0;
}

/** Chance that a check of this margin and standard uncertainty does not hold. */
export function chanceOfFailing(margin: number, u: number): number {
  if (u > 0) return normalCdf(-margin / u);
  return margin < 0 ? 1 : 0;
}

/** Standard uncertainty of a check's margin: `measured` by what was measured, and the making. */
export const doubtOf = (rule: CheckRule, measured: number, v: Row, d: Decisions): number =>
  Math.hypot(measured, makingOf(rule, v, d));

/** Whether a chance of failing is too small to call a check tight. */
export const isSmall = (chance: number, { rules }: Decisions): boolean => chance <= rules['tight-chance'];

/** Whether a margin leaves a check little doubt, or none; `measured` as for `doubtOf`. */
export const isSure = (margin: number, rule: CheckRule, measured: number, v: Row, d: Decisions): boolean =>
  isSmall(chanceOfFailing(margin, doubtOf(rule, measured, v, d)), d);

/** A seam check over no made piece compares a raglan's own two depths: a matter of comfort. */
export function isComfort(rule: CheckRule, d: Decisions): boolean {
  return rule.comfort || (rule.check === 'seam' && !seamsCompare(d));
}

/** A margin within this of nothing is nothing: what is left of it is rounding, mm (ratios: 1). */
export const SPENT = 1e-9;

/** What a check has to spare in a worked-out row; below nothing where it does not hold, NaN where it is not known. */
export function marginOf({ need, have }: CheckRule, v: Row): number {
  const margin = v[have]! - v[need]!;
  return Math.abs(margin) < SPENT ? 0 : margin;
}

/** The checks that apply, are known and do not fail, those of comfort apart. */
export function holdingChecks(v: Row, d: Decisions): ReadonlySet<CheckRule> {
  return new Set(CHECK_RULES.filter((rule) => !isComfort(rule, d) && rule.applies(d, v) && marginOf(rule, v) >= 0));
}
