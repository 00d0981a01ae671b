import { normalCdf } from '#measure';
import type { Choices } from '../design/choices.ts';
import type { Rules } from '../design/rules.ts';
import type { TracedCheck } from './check.ts';
import type { ValueOf } from '../model/path.ts';

/** A margin within this of zero is zero: what is left of it is rounding, mm (ratios: 1). */
const NO_MARGIN = 1e-9;

/** What a check has to spare: less than nothing where it does not hold, NaN where it is not known. */
export function marginOf({ margin }: TracedCheck, v: ValueOf): number {
  const value = v(margin);
  return Math.abs(value) < NO_MARGIN ? 0 : value;
}

/** Chance that a check of this margin and standard uncertainty does not hold. */
export function chanceOfFailing(margin: number, u: number): number {
  if (u > 0) return normalCdf(-margin / u);
  return margin < 0 ? 1 : 0;
}

/** Standard uncertainty of a check's margin: `measured` by what was measured, and the making. */
export function uncertaintyWithMaking(
  { rule, need, have }: TracedCheck,
  measured: number,
  v: ValueOf,
  rules: Rules,
): number {
  switch (rule.kind) {
    case 'girth':
      return Math.hypot(measured, rules.making * v(have));
    case 'girth-needed':
      return Math.hypot(measured, rules.making * v(need));
    case 'stretch':
      return Math.hypot(measured, rules.making * (1 + v(need)));
    case 'length':
      return measured;
  }
}

/** Whether a margin leaves so small a chance of failing that a check is not called tight; `measured` as above. */
export function isSure(margin: number, check: TracedCheck, measured: number, v: ValueOf, choices: Choices): boolean {
  const { rules } = choices;
  const most = rules[check.rule.comfort(choices) ? 'tight-chance-comfort' : 'tight-chance'];
  return chanceOfFailing(margin, uncertaintyWithMaking(check, measured, v, rules)) <= most;
}
