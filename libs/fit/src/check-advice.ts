import { dimensionText } from '#body';
import type { Verdict } from './advice.ts';
import type { CheckRule } from './check-rules.ts';
import { type Saying, sayingOf, type Situation, told } from './check-sayings.ts';
import { lengthWords } from './length-words.ts';

const MEASURE_STRETCH = 'pull the swatch across and measure its stretch';

const HOLDING = new Map<string, string>();

/** Its sentence, made once: most checks of most sheets hold. */
function holding({ holds }: Saying): string {
  const before = HOLDING.get(holds);
  if (before !== undefined) return before;
  const sentence = `${holds}.`;
  HOLDING.set(holds, sentence);
  return sentence;
}

/** What comes of a check whose numbers are known: unknown only where a stretch that was not measured could make good what is missing. */
export type Found = Exclude<Verdict, 'n/a'>;

/** The line beside a check whose numbers are known: for `fails` and `tight` what to change, for `unknown` how to know the fabric. */
export function adviceFor(rule: CheckRule, verdict: Found, at: Situation): string {
  const saying = sayingOf(rule, at.v, at.d);
  switch (verdict) {
    case 'fine':
      return holding(saying);
    case 'tight':
    case 'fails':
      return `${finding(saying, rule, at)}: ${whatToDo(saying, at)}.`;
    case 'unknown':
      return `${unlessItStretches(saying, rule, at)}: ${MEASURE_STRETCH}.`;
  }
}

function finding({ holds, fails, unmeasured }: Saying, rule: CheckRule, at: Situation): string {
  if (at.margin < 0) return `${told(fails, at)}${unmeasured ? '' : `, with ${amount(rule, at)} missing`}`;
  if (at.doubtful === null)
    return `${holds}, ${unmeasured ? 'though not surely' : `with only ${amount(rule, at)} to spare`}`;
  const spare = unmeasured ? '' : `, with ${amount(rule, at)} to spare`;
  return `${holds}${spare}, but ${dimensionText(at.doubtful)} was not measured`;
}

/** Measuring comes before any change of the design, where it may do. */
function whatToDo({ change, measureFirst }: Saying, at: Situation): string {
  if (at.doubtful === null) return told(change, at);
  return measureFirst ?? `measure that, or ${told(change, at)}`;
}

function unlessItStretches({ fails, unstretched }: Saying, rule: CheckRule, at: Situation): string {
  return unstretched === undefined
    ? `${told(fails, at)}, with ${amount(rule, at)} missing unless the fabric stretches`
    : told(unstretched, at);
}

/** A length that is missing or to spare, or a girth; less than the tape shows is still something. */
function amount({ girth }: CheckRule, { margin, d }: Situation): string {
  const words = lengthWords(margin, d.tape);
  if (words === lengthWords(0, d.tape)) return 'a hair';
  return girth ? `${words} of girth` : words;
}
