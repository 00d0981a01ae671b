import { VERDICTS, type CheckName, type Verdict } from '#fit';
import { RATIO_CHECKS } from '../ratio-checks.ts';
import type { Check } from '../sheet-parts.ts';
import { decimalText, type MakersUnit } from './length-text.ts';
import { inWords, wrap } from './lines.ts';
import { printed } from './printed.ts';

/** Their need is the difference of two lengths, and what they have is how large it may be. */
const DIFFERENCES: readonly CheckName[] = ['under-the-arm', 'front-and-back', 'seam', 'nape-to-cuff'];

const WORST_FIRST: readonly Verdict[] = ['fails', 'tight', 'unknown', 'fine'];
const WIDTH = Math.max(...VERDICTS.map((verdict) => verdict.length)) + 4;

/** Checks of a sheet in mm, the worst first, each with what to change and ready changes; those that do not apply in one line. */
export function checkLines(checks: readonly Check[], unit: MakersUnit): string[] {
  const unasked = checks.filter(({ verdict }) => verdict === 'n/a').map(({ check }) => inWords(check));
  return [
    ...WORST_FIRST.flatMap((verdict) =>
      checks.filter((each) => each.verdict === verdict).flatMap((each) => oneCheck(each, unit)),
    ),
    ...(unasked.length > 0 ? wrap(`${unasked.join(', ')}.`, `  ${printed('does-not-apply', {})}`) : []),
  ];
}

function oneCheck(check: Check, unit: MakersUnit): string[] {
  const lead = `  ${check.verdict === 'fails' ? 'FAILS' : check.verdict}`.padEnd(WIDTH);
  const measured = [compared(check, unit), chance(check)].filter((part) => part !== '').join('; ');
  return [
    ...wrap(`${inWords(check.check)}${measured && `: ${measured}`}`, lead),
    ...(check.advice === '' ? [] : wrap(check.advice, ' '.repeat(WIDTH))),
    ...(check.remedies ?? []).flatMap(({ text }) => wrap(`${text}.`, `${' '.repeat(WIDTH)}- `)),
  ];
}

function compared({ check, need, have }: Check, unit: MakersUnit): string {
  if (need === undefined || have === undefined) return '';
  if (RATIO_CHECKS.includes(check)) return `${need.toFixed(2)} against ${have.toFixed(2)}`;
  if (DIFFERENCES.includes(check))
    return printed('at-most', {
      difference: `${decimalText(need, unit)} ${unit}`,
      most: `${decimalText(have, unit)} ${unit}`,
    });
  return `needs ${decimalText(need, unit)} ${unit}, has ${decimalText(have, unit)} ${unit}`;
}

function chance({ chanceOfFailing, verdict }: Check): string {
  if (chanceOfFailing === undefined || verdict === 'fine') return '';
  return printed('chance-of-failing', { chance: chanceOfFailing });
}
