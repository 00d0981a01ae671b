import { normalQuantile } from '#measure';
import type { Check } from './advice.ts';
import { type CheckRule, makingOf, marginOf } from './check-rules.ts';
import { bodyMade, hemCouldWiden, hemIsNarrowest, type Situation } from './check-sayings.ts';
import { waistOf } from './decide.ts';
import type { Decisions } from './decisions.ts';
import { lengthWords } from './length-words.ts';
import { keepsBack, keepsFront, keepsWidth } from './neck.ts';
import type { Nudging } from './nudging.ts';
import { type RuleName, RULES } from './rules.ts';
import { type Row, S } from './slots.ts';

type Remedies = NonNullable<Check['remedies']>;

/** A check that does not hold, or hardly: its rule, the uncertainty of its margin by what was measured, and the checks that hold. */
export interface Wanting {
  readonly rule: CheckRule;
  readonly measured: number;
  readonly holding: ReadonlySet<CheckRule>;
}

/** A field of the design, or a rule, that moves a number of the model: what it says now, and how many mm of the number one of it is. */
interface Knob {
  readonly slot: number;
  readonly field: string;
  readonly now: number;
  readonly scale: number;
}

/** A step that helps, and what the field says then. */
interface Turned {
  readonly by: number;
  readonly to: number;
}

/**
 * The smallest whole number of steps of `step` mm, up to `reach`, for which a number so moved makes the check hold with
 * little doubt; else for which it holds, and by more than it does; null where none does without another check failing.
 */
function turned(
  knob: Knob,
  step: number,
  reach: number,
  wanting: Wanting,
  nudging: Nudging,
  d: Decisions,
): Turned | null {
  const { rule, measured } = wanting;
  const { slot, now, scale } = knob;
  const following = nudging.hanging(slot).to(rule);
  if (following.length === 0) return null;
  const margin = nudging.base[rule.have]! - nudging.base[rule.need]!;
  const nudge = nudging.nudge(slot, following);
  const sure = normalQuantile(1 - d.rules['tight-chance']);
  const helping: Turned[] = [];
  for (let by = step; Math.abs(by) <= reach; by += step) {
    const to = step < 0 ? Math.floor(now + by / scale + 1e-9) : Math.ceil(now + by / scale - 1e-9);
    const v = nudge.by((to - now) * scale);
    const then = v[rule.have]! - v[rule.need]!;
    if (!(then > Math.max(margin + 1e-6, 0))) continue;
    const certain = then >= sure * Math.hypot(measured, makingOf(rule, v, d));
    if (certain || helping.length === 0) helping.unshift({ by, to });
    if (certain) break;
  }
  return helping.find(({ to }) => outlived((to - now) * scale, slot, wanting.holding, nudging)) ?? null;
}

/** Whether all checks that hold still do with a number so moved. */
function outlived(mm: number, slot: number, holding: ReadonlySet<CheckRule>, nudging: Nudging): boolean {
  const { drawing, toDrawing } = nudging.hanging(slot);
  const v = nudging.nudge(slot, toDrawing).by(mm);
  return drawing.every((check) => !holding.has(check) || marginOf(check, v) >= 0);
}

/** The two wishes for a wider garment: its ease, and more than the garment that fits has. */
const WISHES = [S.chosenEase, S.easeChange] as const;

/** How a check's margin moves with a wish, mm a mm. */
const rateOf = (wish: number, { have, need }: CheckRule, nudging: Nudging): number =>
  nudging.slope(have, wish) - nudging.slope(need, wish);

/** So much more or less ease is tried, mm. */
const TRIED = 5;

/** Which way of its ease makes a check's margin larger; null where neither does, as where a limit is reached. */
export function easeThatHelps(rule: CheckRule, nudging: Nudging): Situation['ease'] {
  const before = nudging.base[rule.have]! - nudging.base[rule.need]!;
  for (const wish of WISHES) {
    const rate = rateOf(wish, rule, nudging);
    if (!(Math.abs(rate) > 0)) continue;
    const v = nudging.nudge(wish, nudging.hanging(wish).to(rule)).by(Math.sign(rate) * TRIED);
    if (v[rule.have]! - v[rule.need]! > before + 1e-6) return rate > 0 ? 'more' : 'less';
  }
  return null;
}

/**
 * Changes of the design that make a check hold and none fail that held, as long as the construction and what governs the
 * width stay what they are, ready to apply: keys are fields of the design in mm
 * (`easeMm`, `easeChangeMm`, `frontNeckDepthMm`, `neckWidthMm`, `customLengthMm`), its choices (`hem`, `length`), or a rule as
 * `rules/<name>`.
 */
export function remediesFor(wanting: Wanting, nudging: Nudging, d: Decisions): Remedies {
  const v = nudging.base;
  const turn = (
    knob: Knob,
    step: number,
    reach: number,
    text: (by: string, mm: number) => string,
    rest: Remedies[number]['change'] = {},
  ): Remedies => {
    const found = turned(knob, step, reach, wanting, nudging, d);
    if (found === null) return [];
    return [{ text: text(lengthWords(found.by, d.tape), found.by), change: { ...rest, [knob.field]: found.to } }];
  };
  const own = (slot: number, field: string): Knob => ({ slot, field, now: v[slot]!, scale: 1 });
  const frontNeck = own(S.frontNeck, 'frontNeckDepthMm');
  const neckWidth = own(S.neckWidth, 'neckWidthMm');
  const standing = neckAsItStands(v, d);
  const moreOfRule = (name: RuleName, slot: number, text: (by: string, mm: number) => string): Remedies => {
    const { max } = RULES.find((each) => each.name === name)!;
    const knob = { slot, field: `rules/${name}`, now: d.rules[name], scale: d.kappa };
    return turn(knob, 5, (max - d.rules[name]) * d.kappa, text);
  };
  switch (wanting.rule.check) {
    case 'head-through-neck':
      return [
        ...turn(frontNeck, 5, 200, (by) => `Make the front neck ${by} deeper`, standing),
        ...(d.made.neckWidth ? [] : turn(neckWidth, 5, 150, (by) => `Make the neck ${by} wider`, standing)),
      ];
    case 'hand-through-cuff':
      return moreOfRule('wrist-room', S.wristRoom, (by, mm) => {
        const slides = v[S.cuffInner]! + mm > v[S.hand]!;
        return `Make the cuff ${by} wider round${slides ? ', and plan to fold it back' : ''}`;
      });
    case 'armhole':
      return moreOfRule('armhole-room', S.armholeRoom, (by) => `Make the armhole ${by} deeper`);
    case 'upper-arm':
    case 'over-the-shoulders':
    case 'negative-ease':
    case 'hip': {
      // Of a body already made the ease moves nothing but a hem that follows the hip, and that is made with it.
      const fixed = wanting.rule.check !== 'upper-arm' && bodyMade(d);
      const wish = fixed ? undefined : WISHES.find((each) => rateOf(each, wanting.rule, nudging) > 0);
      if (wish === undefined) return otherHem(wanting.rule, v, d);
      const reach = easeReach(wish, v, d);
      const wider =
        wish === S.chosenEase
          ? turn(own(wish, 'easeMm'), 5, reach, (by) => `Choose ${by} more ease`)
          : turn(own(wish, 'easeChangeMm'), 5, reach, (by) => `Make it ${by} wider round than now`);
      return [...otherHem(wanting.rule, v, d), ...wider];
    }
    case 'neck-on-shoulders':
      if (d.made.neckWidth) return [];
      return turn(neckWidth, -5, v[S.neckWidth]! * 0.6, (by) => `Make the neck ${by} narrower`, standing);
    case 'body-below-underarm':
      if (d.made.bodyToUnderarm) return [];
      return turn(
        own(S.length, 'customLengthMm'),
        10,
        d.hipReached ? 600 : aboveHip(v, d),
        (by) => `Make the body ${by} longer`,
        { length: 'custom' },
      );
    case 'neck-depth':
      return turn(frontNeck, -5, v[S.frontNeck]! * 0.6, (by) => `Make the V ${by} shallower`, standing);
    default:
      return [];
  }
}

/** How much longer a body may be made that is to stay above the hip, mm; NaN where the waist is not known. Below it, it is another garment. */
const aboveHip = (v: Row, d: Decisions): number => waistOf(v, d.rules) + d.sized['hip-reached'] - v[S.length]! - 1;

/** How much more is asked for at most, mm. A close fit stays one, since beyond it the fabric's stretch would count no more. */
function easeReach(wish: number, v: Row, d: Decisions): number {
  const movesEase = (wish === S.easeChange) === d.easeFromGarment;
  return d.closeFitting && movesEase ? d.sized['close-ease'] - v[S.ease]! - 1 : 300;
}

/** A hem that follows the hip where that makes it wider, or falls straight where the body above is. */
function otherHem({ check, have, need }: CheckRule, v: Row, d: Decisions): Remedies {
  const stretched = v[have]! / (check === 'hip' ? v[S.hemInner]! : v[S.narrowestInner]!);
  if (check === 'hip' && hemCouldWiden(v, d) && (v[S.hipFlat]! - 4 * v[S.thickness]!) * stretched >= v[need]!)
    return [{ text: 'Let the hem follow the hip', change: { hem: 'tapered' } }];
  if (check === 'over-the-shoulders' && hemIsNarrowest(v, d) && v[S.bodyInner]! * stretched >= v[need]!)
    return [{ text: 'Let the hem fall straight', change: { hem: 'straight' } }];
  return [];
}

/** A neck that was widened for the head, in its three fields: one of them changed, the other two would be widened anew. */
function neckAsItStands(v: Row, d: Decisions): Remedies[number]['change'] {
  if (!(v[S.neckScale]! > 1)) return {};
  return {
    ...(!keepsWidth(d) && { neckWidthMm: v[S.neckWidth]! }),
    ...(!keepsFront(d) && { frontNeckDepthMm: v[S.frontNeck]! }),
    ...(!keepsBack(d) && { backNeckDepthMm: v[S.backNeck]! }),
  };
}
