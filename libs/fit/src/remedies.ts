import type { Remedy } from './advice.ts';
import { type CheckRule, isComfort, isSure, marginOf } from './check-rules.ts';
import { hemIsNarrowest, type Situation } from './check-cures.ts';
import type { Decisions } from './decisions.ts';
import type { FitRequest } from './fit-request.ts';
import { bodyStands, frontStands, sleeveStands } from './made.ts';
import type { RemedyCodes, RemedyMessage } from './messages/remedy-codes.ts';
import { NONE } from './messages/none.ts';
import { keepsBack, keepsFront, keepsWidth } from './neck.ts';
import type { Nudging } from './nudging.ts';
import { RULES } from './rules.ts';
import { type Row, S } from './slots.ts';
import { type Change, type Field, tried } from './trial.ts';
import type { WorkedOut } from './work-out.ts';

/** A change of the design that makes a check hold; and how many others it spoils, of comfort, or of their certainty. */
interface Found {
  readonly message: RemedyMessage;
  readonly change: Change;
  readonly spoilt: number;
}

/** A field of the design, or a rule, that moves a number of the model: what it telling now, and how many mm of the number one of it is. */
interface Knob {
  readonly slot: number;
  readonly field: Field;
  readonly now: number;
  readonly scale: number;
}

/** The remedies that are told by a length alone. */
type ByLength = {
  [Code in keyof RemedyCodes]: { byMm: number } extends RemedyCodes[Code] ? Code : never;
}[keyof RemedyCodes];

/** What a remedy telling of the mm by which it moves a number, which may be less than nothing; or its code, which takes how many they are. */
type Telling = ByLength | ((mm: number) => RemedyMessage);

const messageOf = (telling: Telling, mm: number): RemedyMessage =>
  typeof telling === 'string' ? { code: telling, params: { byMm: Math.abs(mm) } } : telling(mm);

/** The two wishes for a wider garment: its ease, and more than the garment that fits has. */
const WISHES = [S.chosenEase, S.easeChange] as const;

/** How a check's margin moves with a wish, mm a mm. */
const rateOf = (wish: number, { have, need }: CheckRule, nudging: Nudging): number =>
  nudging.slope(have, wish) - nudging.slope(need, wish);

/** So much more or less ease is tried, mm. */
const TRIED = 5;

/** Which way of its ease makes a check's margin larger, and whose ease that is; null where neither does, as where a limit is reached. */
export function easeThatHelps(rule: CheckRule, nudging: Nudging): Situation['ease'] {
  for (const wish of WISHES) {
    const rate = rateOf(wish, rule, nudging);
    if (!(Math.abs(rate) > 0)) continue;
    if (helps(rule, wish, Math.sign(rate) * TRIED, nudging))
      return { way: rate > 0 ? 'more' : 'less', ofGarment: wish === S.easeChange };
  }
  return null;
}

/** Whether a number moved by so many mm makes a check's margin larger. */
export function helps(rule: CheckRule, slot: number, mm: number, nudging: Nudging): boolean {
  const v = nudging.nudge(slot, nudging.hanging(slot).to(rule)).by(mm);
  return marginOf(rule, v) > marginOf(rule, nudging.base) + 1e-6;
}

/** So much more ease is offered at most, mm: what is looser than that is another garment (assumed). */
const MOST_EASE = 100;
/** So much deeper a front neck is offered at most, mm; a boat that is any deeper is none (assumed). */
const MOST_DEEPER = 200;
const MOST_DEEPER_BOAT = 30;

/**
 * Changes of the design that make a check hold and none fail that held, those first that spoil nothing else. One that holds already,
 * or is of comfort alone, is only mended where no other comes to be doubtful for it. `measured` is the uncertainty of its margin
 * by what was measured.
 */
export function remediesFor(rule: CheckRule, measured: number, request: FitRequest, worked: WorkedOut): Remedy[] {
  return new Mending(rule, measured, request, worked)
    .remedies()
    .sort((a, b) => a.spoilt - b.spoilt)
    .map(({ message, change }) => ({ ...message, change }));
}

/** One check that does not hold, or hardly, in a garment as worked out, and what could be changed for it. */
class Mending {
  readonly #rule: CheckRule;
  readonly #measured: number;
  readonly #request: FitRequest;
  readonly #worked: WorkedOut;

  constructor(rule: CheckRule, measured: number, request: FitRequest, worked: WorkedOut) {
    this.#rule = rule;
    this.#measured = measured;
    this.#request = request;
    this.#worked = worked;
  }

  remedies(): Found[] {
    const { row: v, decisions: d } = this.#worked;
    const frontNeck = this.#own(S.frontNeck, 'frontNeckDepthMm');
    const neckWidth = this.#own(S.neckWidth, 'neckWidthMm');
    const asItStands = neckAsItStands(v, d);
    const whole = bodyStands(d);
    switch (this.#rule.check) {
      case 'head-through-neck': {
        const most = d.neckline === 'boat' ? MOST_DEEPER_BOAT * d.kappa : MOST_DEEPER;
        return [
          ...(frontStands(d) ? [] : this.#turn(frontNeck, 5, most, 'deeper-front-neck', asItStands)),
          ...(whole ? [] : this.#turn(neckWidth, 5, 150, 'wider-neck', asItStands)),
        ];
      }
      case 'hand-through-cuff':
        if (sleeveStands(d)) return [];
        return this.#moreOfRule('wrist-room', S.wristRoom, (byMm) => {
          const foldBack = v[S.cuffInner]! + byMm > v[S.hand]!;
          return { code: 'wider-cuff', params: { byMm, foldBack } };
        });
      case 'armhole':
        if (whole) return [];
        return this.#moreOfRule('armhole-room', S.armholeRoom, 'deeper-armhole');
      case 'upper-arm':
      case 'over-the-shoulders':
      case 'negative-ease':
      case 'hip':
        return whole ? [] : [...this.#straightHem(), ...this.#moreEase()];
      case 'neck-on-shoulders':
        if (whole) return [];
        return [
          ...this.#less(neckWidth, 'narrower-neck', asItStands),
          ...this.#less(this.#own(S.band, 'bandMm'), 'shallower-bands'),
        ];
      case 'body-below-underarm': {
        if (whole) return [];
        const length = this.#own(S.length, 'customLengthMm');
        return [...this.#turn(length, 10, 600, 'longer-body', { length: 'custom' }), ...this.#shallowerRib()];
      }
      case 'sleeve-below-underarm':
        return sleeveStands(d) || whole ? [] : this.#shallowerRib();
      case 'neck-depth':
        return frontStands(d) ? [] : this.#less(frontNeck, 'shallower-v', asItStands);
      default:
        return [];
    }
  }

  /** A field of the design that telling a number of the model as it is. */
  #own(slot: number, field: Field): Knob {
    return { slot, field, now: this.#worked.row[slot]!, scale: 1 };
  }

  #moreOfRule(name: 'wrist-room' | 'armhole-room', slot: number, telling: Telling): Found[] {
    const { rules, kappa } = this.#worked.decisions;
    const { max } = RULES.find((each) => each.name === name)!;
    const knob = { slot, field: `rules/${name}` as const, now: rules[name], scale: kappa };
    return this.#turn(knob, 5, (max - rules[name]) * kappa, telling);
  }

  #shallowerRib(): Found[] {
    return this.#less(this.#own(S.rib, 'ribMm'), 'shallower-rib');
  }

  /** At most so much less that two fifths are left (assumed). */
  #less(knob: Knob, telling: Telling, rest: Change = {}): Found[] {
    return this.#turn(knob, -5, knob.now * 0.6, telling, rest);
  }

  #moreEase(): Found[] {
    const { nudging } = this.#worked;
    const wish = WISHES.find((each) => rateOf(each, this.#rule, nudging) > 0);
    if (wish === undefined) return [];
    return wish === S.chosenEase
      ? this.#turn(this.#own(wish, 'easeMm'), TRIED, MOST_EASE, 'more-ease')
      : this.#turn(this.#own(wish, 'easeChangeMm'), TRIED, MOST_EASE, 'wider-round');
  }

  /** A hem that falls straight where one that follows the hip is what does not go on. */
  #straightHem(): Found[] {
    const { row, decisions } = this.#worked;
    if (this.#rule.check !== 'over-the-shoulders' || !hemIsNarrowest(row, decisions)) return [];
    return this.#offered({ hem: 'straight' }, { code: 'straight-hem', params: NONE });
  }

  /**
   * The smallest whole number of steps of `step` mm, up to `reach`, for which a number so moved makes the check hold with
   * little doubt; else, where it fails, for which it holds at all; none where another check would fail for it.
   */
  #turn(knob: Knob, step: number, reach: number, telling: Telling, rest: Change = {}): Found[] {
    const { now, scale, field } = knob;
    for (const by of this.#helping(knob, step, reach)) {
      const to = turnedTo(now, by / scale);
      const message = messageOf(telling, (to - now) * scale);
      const offered = this.#offered({ ...rest, [field]: to }, message);
      if (offered.length > 0) return offered;
    }
    return [];
  }

  /** By how much a number is to be moved, mm, for the check to hold with little doubt, and for it to hold; nothing else being decided for it. */
  #helping({ slot, now, scale }: Knob, step: number, reach: number): number[] {
    const { nudging, decisions } = this.#worked;
    const following = nudging.hanging(slot).to(this.#rule);
    if (following.length === 0) return [];
    const margin = marginOf(this.#rule, nudging.base);
    const nudge = nudging.nudge(slot, following);
    const holding: number[] = [];
    for (let by = step; Math.abs(by) <= reach; by += step) {
      const v = nudge.by((turnedTo(now, by / scale) - now) * scale);
      const then = marginOf(this.#rule, v);
      if (!(then > Math.max(margin + 1e-6, 0))) continue;
      if (isSure(then, this.#rule, this.#measured, v, decisions)) return [by, ...holding];
      if (margin < 0 && holding.length === 0) holding.push(by);
    }
    return holding;
  }

  /** A change, where it does mend the check: one that holds already is to be left little doubt. */
  #offered(change: Change, message: RemedyMessage): Found[] {
    const { row, decisions } = this.#worked;
    const before = marginOf(this.#rule, row);
    const outcome = tried(change, this.#rule, this.#request, this.#worked);
    if (outcome === null || !(outcome.margin > Math.max(before, 0))) return [];
    const { margin, spoilt, tightened } = outcome;
    if (before >= 0 && !isSure(margin, this.#rule, this.#measured, row, decisions)) return [];
    if (tightened > 0 && (before >= 0 || isComfort(this.#rule, decisions))) return [];
    return [{ message, change, spoilt: spoilt + tightened }];
  }
}

/** What a field telling that is moved by so much: a whole number, for one that is easy to write. */
const turnedTo = (now: number, by: number): number =>
  by < 0 ? Math.floor(now + by + 1e-9) : Math.ceil(now + by - 1e-9);

/** A neck that was widened for the head, in its three fields, to the millimetre: one of them changed, the other two would be widened anew. */
function neckAsItStands(v: Row, d: Decisions): Change {
  if (!(v[S.neckScale]! > 1)) return {};
  return {
    ...(!keepsWidth(d) && { neckWidthMm: Math.round(v[S.neckWidth]!) }),
    ...(!keepsFront(d) && { frontNeckDepthMm: Math.round(v[S.frontNeck]!) }),
    ...(!keepsBack(d) && { backNeckDepthMm: Math.round(v[S.backNeck]!) }),
  };
}
