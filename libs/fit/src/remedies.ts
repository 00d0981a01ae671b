import { normalQuantile } from '#measure';
import type { Check } from './advice.ts';
import { type CheckRule, makingOf } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import { lengthWords } from './length-words.ts';
import type { Nudging } from './nudging.ts';
import { type RuleName, RULES } from './rules.ts';
import { type Row, S } from './slots.ts';

type Remedies = NonNullable<Check['remedies']>;

const roundUp = (mm: number, step: number): number => Math.ceil(mm / step - 1e-9) * step;

/** A check that does not hold, or hardly: its rule, and the uncertainty of its margin by what was measured. */
export interface Wanting {
  readonly rule: CheckRule;
  readonly measured: number;
}

/**
 * The smallest whole number of steps of `step` mm, up to `most`, for which a number so moved makes the check hold with
 * little doubt; else for which it holds, and by more than it does; null where none does.
 */
function stepsThatHelp(
  slot: number,
  step: number,
  most: number,
  { rule, measured }: Wanting,
  nudging: Nudging,
  d: Decisions,
): number | null {
  const margin = nudging.base[rule.have]! - nudging.base[rule.need]!;
  const following = nudging.hanging(slot).to(rule);
  if (following.length === 0) return null;
  const nudge = nudging.nudge(slot, following);
  const sure = normalQuantile(1 - d.rules['tight-chance']);
  let holds: number | null = null;
  for (let by = step; Math.abs(by) <= most; by += step) {
    const v = nudge.by(by);
    const then = v[rule.have]! - v[rule.need]!;
    if (!(then > Math.max(margin + 1e-6, 0))) continue;
    if (then >= sure * Math.hypot(measured, makingOf(rule, v, d))) return by;
    holds ??= by;
  }
  return holds;
}

/**
 * Changes of the design that make a check hold, ready to apply: keys are fields of the design in mm (`easeMm`,
 * `frontNeckDepthMm`, `neckWidthMm`, `customLengthMm`), its choices (`hem`), or a rule as `rules/<name>`.
 */
export function remediesFor(wanting: Wanting, nudging: Nudging, d: Decisions): Remedies {
  const v = nudging.base;
  const help = (slot: number, step: number, most: number): number | null =>
    stepsThatHelp(slot, step, most, wanting, nudging, d);
  switch (wanting.rule.check) {
    case 'head-through-neck': {
      const deeper = help(S.frontNeck, 5, 200);
      const wider = d.made.neckWidth ? null : help(S.neckWidth, 5, 150);
      return [
        ...one(deeper, (by) => ({
          text: `Make the front neck ${lengthWords(by, d.tape)} deeper`,
          change: { frontNeckDepthMm: roundUp(v[S.frontNeck]! + by, 1) },
        })),
        ...one(wider, (by) => ({
          text: `Make the neck ${lengthWords(by, d.tape)} wider`,
          change: { neckWidthMm: roundUp(v[S.neckWidth]! + by, 1) },
        })),
      ];
    }
    case 'hand-through-cuff':
      return moreOfRule('wrist-room', S.wristRoom, 'Make the cuff', 'wider round', wanting, nudging, d);
    case 'upper-arm':
    case 'over-the-shoulders':
    case 'negative-ease':
    case 'hip':
      return [...tapered(wanting.rule, v, d), ...moreEase(wanting, nudging, d)];
    case 'armhole':
      return moreOfRule('armhole-room', S.armholeRoom, 'Make the armhole', 'deeper', wanting, nudging, d);
    case 'neck-on-shoulders': {
      const narrower = d.made.neckWidth ? null : help(S.neckWidth, -5, v[S.neckWidth]! * 0.6);
      return one(narrower, (by) => ({
        text: `Make the neck ${lengthWords(by, d.tape)} narrower`,
        change: { neckWidthMm: Math.floor(v[S.neckWidth]! + by) },
      }));
    }
    case 'body-below-underarm': {
      const longer = d.made.bodyToUnderarm ? null : help(S.length, 10, 600);
      return one(longer, (by) => ({
        text: `Make the body ${lengthWords(by, d.tape)} longer`,
        change: { length: 'custom', customLengthMm: roundUp(v[S.length]! + by, 1) },
      }));
    }
    case 'neck-depth': {
      const shallower = help(S.frontNeck, -5, v[S.frontNeck]! * 0.6);
      return one(shallower, (by) => ({
        text: `Make the V ${lengthWords(by, d.tape)} shallower`,
        change: { frontNeckDepthMm: Math.floor(v[S.frontNeck]! + by) },
      }));
    }
    default:
      return [];
  }
}

function one<T, R>(value: T | null, make: (value: T) => R): R[] {
  return value === null ? [] : [make(value)];
}

/** More of what a rule gives, within what it takes; a number that was made or taken over does not move with it. */
function moreOfRule(
  name: RuleName,
  slot: number,
  make: string,
  how: string,
  wanting: Wanting,
  nudging: Nudging,
  d: Decisions,
): Remedies {
  const { max } = RULES.find((each) => each.name === name)!;
  const more = stepsThatHelp(slot, 5, (max - d.rules[name]) * d.kappa, wanting, nudging, d);
  return one(more, (by) => ({
    text: `${make} ${lengthWords(by, d.tape)} ${how}`,
    change: { [`rules/${name}`]: Math.min(Math.ceil(d.rules[name] + by / d.kappa), max) },
  }));
}

/** A hem that follows the hip instead of the body above it, where that is wider. */
function tapered(rule: CheckRule, v: Row, d: Decisions): Remedies {
  if (rule.check !== 'hip' || d.hem === 'tapered' || !(v[S.hipFlat]! > v[S.hemFlat]! + 1e-6)) return [];
  const stretched = v[S.hipHave]! / v[S.hemInner]!;
  const have = (v[S.hipFlat]! - 4 * v[S.thickness]!) * stretched;
  return have < v[S.hipNeed]! ? [] : [{ text: 'Let the hem follow the hip', change: { hem: 'tapered' } }];
}

/**
 * More ease at the chest; a region takes a share of it, so the whole is worked out again for each step. A close fit stays
 * one, since beyond it the fabric's stretch would count no more.
 */
function moreEase(wanting: Wanting, nudging: Nudging, d: Decisions): Remedies {
  const ease = nudging.base[S.chosenEase]!;
  const most = d.closeFitting ? d.sized['close-ease'] - ease - 1 : 300;
  const more = stepsThatHelp(S.chosenEase, 5, most, wanting, nudging, d);
  return one(more, (by) => ({
    text: `Choose ${lengthWords(by, d.tape)} more ease`,
    change: { easeMm: Math.ceil(ease + by) },
  }));
}
