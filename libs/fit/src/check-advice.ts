import type { Verdict } from './advice.ts';
import { type Saying, type Situation, told } from './check-sayings.ts';
import { lengthWords, type Tape } from './length-words.ts';

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
export function adviceFor(saying: Saying, verdict: Found, at: Situation): string {
  switch (verdict) {
    case 'fine':
      return holding(saying);
    case 'tight':
    case 'fails':
      return `${finding(saying, at)}: ${told(saying.change, at)}.`;
    case 'unknown':
      return `${unlessItStretches(saying, at)}: ${MEASURE_STRETCH}.`;
  }
}

function finding({ holds, fails, unmeasured }: Saying, at: Situation): string {
  const { margin, d } = at;
  if (unmeasured) return margin < 0 ? told(fails, at) : `${holds}, but only just`;
  return margin < 0
    ? `${told(fails, at)}, by ${amount(margin, d.tape)}`
    : `${holds}, with only ${amount(margin, d.tape)} to spare`;
}

function unlessItStretches({ fails, unstretched }: Saying, at: Situation): string {
  return unstretched === undefined
    ? `${told(fails, at)}, by ${amount(at.margin, at.d.tape)}, unless the fabric stretches`
    : told(unstretched, at);
}

/** A length that is missing or to spare; less than the tape shows is still something. */
function amount(mm: number, tape: Tape): string {
  const words = lengthWords(mm, tape);
  return words === lengthWords(0, tape) ? 'a hair' : words;
}
