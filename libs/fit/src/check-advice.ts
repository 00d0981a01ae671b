import type { CheckName, Verdict } from './advice.ts';
import { lengthWords, type Tape } from './length-words.ts';

/** What a check says: where it holds, where it does not, what to change then, and what to measure where it is not known. */
interface Saying {
  readonly holds: string;
  /** Said with the missing length, where that is a length. */
  readonly fails: string;
  readonly change: string;
  readonly measure: string;
  /** Said where the fabric’s stretch is not known, if not that it fails, by how much, unless the fabric stretches. */
  readonly unstretched?: string;
  /** Neither how much is missing nor how much is spare tells anything. */
  readonly unmeasured?: true;
}

const SAYINGS: Readonly<Record<CheckName, Saying>> = {
  'head-through-neck': {
    holds: 'The neck passes the head',
    fails: 'The neck will not pass the head',
    change: 'make it deeper or wider, or leave a shoulder open with buttons',
    measure: 'Measure the head and the neck base to know whether the neck passes.',
  },
  'hand-through-cuff': {
    holds: 'The cuff passes the hand',
    fails: 'The cuff will not pass the hand',
    change: 'make it wider, or its rib stretchier',
    measure: 'Measure the hand and the wrist to know whether the cuff passes.',
  },
  'cuff-stays': {
    holds: 'The cuff stays above the hand',
    fails: 'The cuff is about as wide as the hand and may slide over it',
    change: 'make it closer, or plan to fold it back',
    measure: 'Measure the hand and the wrist to know whether the cuff stays up.',
    unmeasured: true,
  },
  'upper-arm': {
    holds: 'The sleeve clears the upper arm',
    fails: 'The sleeve is too close for the upper arm',
    change: 'choose more ease, or a fabric that stretches',
    measure: 'Measure the upper arm; for a close fit, pull the swatch across and measure its stretch too.',
  },
  armhole: {
    holds: 'The armhole clears the shoulder',
    fails: 'The armhole is too close for the shoulder',
    change: 'make it deeper',
    measure: 'Measure the scye girth; for a close fit, the swatch’s stretch too.',
  },
  'over-the-shoulders': {
    holds: 'It goes on over the shoulders',
    fails: 'It will not go on over the shoulders',
    change: 'choose more ease, a stretchier fabric, or a cardigan',
    measure: 'Measure the shoulder girth.',
  },
  hip: {
    holds: 'The hem clears the hip',
    fails: 'The hem is too close for the hip',
    change: 'choose more ease or a shorter length',
    measure: 'Measure the hip; for a close fit, the swatch’s stretch too.',
  },
  'negative-ease': {
    holds: 'The fabric stretches as far as this close fit asks',
    fails: 'The garment is smaller than the body, by about all that its fabric stretches or more',
    change: 'choose more ease or a stretchier fabric',
    unstretched: 'The garment is smaller than the body',
    measure: 'Measure the chest to know whether the fabric has to stretch.',
    unmeasured: true,
  },
  'neck-on-shoulders': {
    holds: 'The neck stays on the shoulders',
    fails: 'The neck is too wide to stay on the shoulders',
    change: 'make it narrower',
    measure: 'Measure across the back to know whether the neck stays on the shoulders.',
  },
  'body-below-underarm': {
    holds: 'There is body below the underarm',
    fails: 'There is too little body below the underarm',
    change: 'make it longer or the armhole shallower',
    measure: 'Measure the scye depth and the back waist length.',
  },
  'sleeve-below-underarm': {
    holds: 'There is sleeve below the underarm',
    fails: 'There is too little sleeve below the underarm',
    change: 'choose less ease, or a set-in sleeve',
    measure: 'Measure nape to cuff to know how long the sleeve is.',
  },
  'under-the-arm': {
    holds: 'The seam under the arm is about the arm’s own length',
    fails: 'The seam under the arm differs from the arm’s own length, so it may pull when the arm is raised, or fold',
    change: 'compare it with a sweater that fits',
    measure: 'Measure the arm to the underarm to compare the seam with it.',
    unmeasured: true,
  },
  'neck-depth': {
    holds: 'The V ends above the bust line',
    fails: 'The V reaches to the bust line or near it',
    change: 'make it shallower, or wear something beneath',
    measure: 'Measure the scye depth to know where the V ends.',
    unmeasured: true,
  },
  'sleeve-taper': {
    holds: 'The sleeve narrows gently',
    fails: 'The sleeve narrows steeply',
    change: 'a wider cuff, a shallower armhole or a longer sleeve would be easier to shape',
    measure: 'Measure nape to cuff and the wrist.',
    unmeasured: true,
  },
  'front-and-back': {
    holds: 'Front and back can be the same length',
    fails: 'The front of the body is longer than the back, and the sweater’s would ride up',
    change: 'work short rows across the front',
    measure: 'Measure front and back waist length to know whether short rows help.',
    unmeasured: true,
  },
  seam: {
    holds: 'The edges that join are alike',
    fails: 'The edges that join differ too much',
    change: 'ease one into the other, or work one again',
    measure: 'Enter both pieces of the seam.',
  },
  'nape-to-cuff': {
    holds: 'The sleeve as made reaches the cuff as wished',
    fails: 'The sleeve as made misses the cuff as wished',
    change: 'add to the cuff, or fold it',
    measure: 'Measure nape to cuff.',
    unmeasured: true,
  },
};

const MEASURE_STRETCH = 'pull the swatch across and measure its stretch';

const HOLDING = Object.fromEntries(Object.entries(SAYINGS).map(([check, { holds }]) => [check, `${holds}.`])) as Record<
  CheckName,
  string
>;

/**
 * The line beside a check: for `fails` and `tight` what to change, for `unknown` what to measure: of the body, or, where
 * all of it is known and only a stretch could make good what is missing, of the fabric. `margin` in mm.
 */
export function adviceFor(check: CheckName, verdict: Verdict, margin: number, tape: Tape): string {
  const saying = SAYINGS[check];
  switch (verdict) {
    case 'fine':
      return HOLDING[check];
    case 'tight':
    case 'fails':
      return `${finding(saying, margin, tape)}: ${saying.change}.`;
    case 'unknown':
      if (margin >= 0) return saying.measure;
      return `${saying.unstretched ?? `${saying.fails}, by ${lengthWords(margin, tape)}, unless the fabric stretches`}: ${MEASURE_STRETCH}.`;
    case 'n/a':
      return 'Does not apply to this design.';
  }
}

function finding({ holds, fails, unmeasured }: Saying, margin: number, tape: Tape): string {
  if (unmeasured) return margin < 0 ? fails : `${holds}, but only just`;
  return margin < 0
    ? `${fails}, by ${lengthWords(margin, tape)}`
    : `${holds}, with only ${lengthWords(margin, tape)} to spare`;
}
