import type { Check } from './advice.ts';
import type { CheckRule } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import type { Nudging } from './nudging.ts';
import { S } from './slots.ts';

type Remedies = NonNullable<Check['remedies']>;

const roundUp = (mm: number, step: number): number => Math.ceil(mm / step - 1e-9) * step;
const cm = (mm: number): string => `${Number((mm / 10).toFixed(1))} cm`;

/** The smallest whole number of steps of `step` mm, up to `most`, for which a number so moved makes the check hold; null where none does. */
function stepsThatHelp(slot: number, step: number, most: number, rule: CheckRule, nudging: Nudging): number | null {
  for (let by = step; Math.abs(by) <= most; by += step) {
    const v = nudging.nudged(slot, by);
    if (v[rule.have]! - v[rule.need]! >= 0) return by;
  }
  return null;
}

/**
 * Changes of the design that make a check hold, ready to apply: keys are fields of the design in mm (`easeMm`,
 * `frontNeckDepthMm`, `neckWidthMm`, `customLengthMm`), its choices (`hem`), or a rule as `rules/<name>`.
 */
export function remediesFor(rule: CheckRule, nudging: Nudging, d: Decisions): Remedies {
  const v = nudging.base;
  const help = (slot: number, step: number, most: number): number | null =>
    stepsThatHelp(slot, step, most, rule, nudging);
  switch (rule.check) {
    case 'head-through-neck': {
      const deeper = help(S.frontNeck, 5, 200);
      const wider = help(S.neckWidth, 5, 150);
      return [
        ...one(deeper, (by) => ({
          text: `Make the front neck ${cm(by)} deeper`,
          change: { frontNeckDepthMm: roundUp(v[S.frontNeck]! + by, 1) },
        })),
        ...one(wider, (by) => ({
          text: `Make the neck ${cm(by)} wider`,
          change: { neckWidthMm: roundUp(v[S.neckWidth]! + by, 1) },
        })),
      ];
    }
    case 'hand-through-cuff': {
      const wider = help(S.cuff, 5, 150);
      return one(wider, (by) => ({
        text: `Make the cuff ${cm(by)} wider round`,
        change: { 'rules/wrist-room': Math.ceil(d.rules['wrist-room'] + by / d.kappa) },
      }));
    }
    case 'upper-arm':
    case 'over-the-shoulders':
    case 'negative-ease':
    case 'hip':
      return [...tapered(rule, d), ...moreEase(rule, nudging)];
    case 'armhole': {
      const deeper = help(d.construction === 'raglan' ? S.raglan : S.armhole, 5, 150);
      return one(deeper, (by) => ({
        text: `Make the armhole ${cm(by)} deeper`,
        change: { 'rules/armhole-room': Math.ceil(d.rules['armhole-room'] + by / d.kappa) },
      }));
    }
    case 'neck-on-shoulders': {
      const narrower = help(S.neckWidth, -5, v[S.neckWidth]! * 0.6);
      return one(narrower, (by) => ({
        text: `Make the neck ${cm(-by)} narrower`,
        change: { neckWidthMm: Math.floor(v[S.neckWidth]! + by) },
      }));
    }
    case 'body-below-underarm': {
      const longer = help(S.length, 10, 600);
      return one(longer, (by) => ({
        text: `Make the body ${cm(by)} longer`,
        change: { length: 'custom', customLengthMm: roundUp(v[S.length]! + by, 1) },
      }));
    }
    case 'neck-depth': {
      const shallower = help(S.frontNeck, -5, v[S.frontNeck]! * 0.6);
      return one(shallower, (by) => ({
        text: `Make the V ${cm(-by)} shallower`,
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

function tapered(rule: CheckRule, d: Decisions): Remedies {
  return rule.check === 'hip' && d.hem === 'straight'
    ? [{ text: 'Let the hem follow the hip', change: { hem: 'tapered' } }]
    : [];
}

/** More ease at the chest; a region takes a share of it, so the whole is worked out again for each step. */
function moreEase(rule: CheckRule, nudging: Nudging): Remedies {
  const v = nudging.base;
  const more = stepsThatHelp(S.chosenEase, 5, 300, rule, nudging);
  return one(more, (by) => ({
    text: `Choose ${cm(by)} more ease`,
    change: { easeMm: Math.ceil(v[S.chosenEase]! + by) },
  }));
}
