import type { CheckName, Verdict } from './advice.ts';
import type { Decisions } from './decisions.ts';

/** What a check says when it holds, and what to change when it does not. `by` is the missing or spare length in words. */
interface Saying {
  readonly holds: string;
  readonly change: (by: string, d: Decisions) => string;
  readonly measure: string;
}

const SAYINGS: Readonly<Record<CheckName, Saying>> = {
  'head-through-neck': {
    holds: 'The neck passes the head',
    change: (by) => `The neck passes the head ${by}: make it deeper or wider, or leave a shoulder open with buttons.`,
    measure: 'Measure the head and the neck base to know whether the neck passes.',
  },
  'hand-through-cuff': {
    holds: 'The cuff passes the hand',
    change: (by) => `The cuff passes the hand ${by}: make it wider, or its rib stretchier.`,
    measure: 'Measure the hand and the wrist to know whether the cuff passes.',
  },
  'cuff-stays': {
    holds: 'The cuff stays above the hand',
    change: () =>
      'The cuff is about as wide as the hand and may slide over it: make it closer, or plan to fold it back.',
    measure: 'Measure the hand and the wrist to know whether the cuff stays up.',
  },
  'upper-arm': {
    holds: 'The sleeve clears the upper arm',
    change: (by) => `The sleeve clears the upper arm ${by}: choose more ease, or a fabric that stretches.`,
    measure: 'Measure the upper arm; for a close fit, pull the swatch across and measure its stretch too.',
  },
  armhole: {
    holds: 'The armhole clears the shoulder',
    change: (by) => `The armhole clears the shoulder ${by}: make it deeper.`,
    measure: 'Measure the scye girth; for a close fit, the swatch’s stretch too.',
  },
  'over-the-shoulders': {
    holds: 'It goes on over the shoulders',
    change: (by) => `It goes on over the shoulders ${by}: choose more ease, a stretchier fabric, or a cardigan.`,
    measure: 'Measure the shoulder girth, or pull the swatch across and measure its stretch.',
  },
  hip: {
    holds: 'The hem clears the hip',
    change: (by) => `The hem clears the hip ${by}: choose a tapered hem, more ease, or a shorter length.`,
    measure: 'Measure the hip; for a close fit, the swatch’s stretch too.',
  },
  'negative-ease': {
    holds: 'The fabric stretches as far as this close fit asks',
    change: () =>
      'The garment is smaller than the body and its fabric must stretch all the time: choose more ease or a stretchier fabric.',
    measure: 'The garment is smaller than the body: pull the swatch across and measure its stretch.',
  },
  'neck-on-shoulders': {
    holds: 'The neck stays on the shoulders',
    change: (by) => `The neck stays on the shoulders ${by}: make it narrower or the band deeper.`,
    measure: 'Measure across the back to know whether the neck stays on the shoulders.',
  },
  'body-below-underarm': {
    holds: 'There is body below the underarm',
    change: (by) => `There is body below the underarm ${by}: make it longer or the armhole shallower.`,
    measure: 'Measure the scye depth and the back waist length.',
  },
  'sleeve-below-underarm': {
    holds: 'There is sleeve below the underarm',
    change: (by) => `There is sleeve below the underarm ${by}: choose less ease, or a set-in sleeve.`,
    measure: 'Measure nape to cuff to know how long the sleeve is.',
  },
  'under-the-arm': {
    holds: 'The seam under the arm is about the arm’s own length',
    change: () =>
      'The seam under the arm differs from the arm’s own length: it may pull when the arm is raised, or fold. Compare it with a sweater that fits.',
    measure: 'Measure the arm to the underarm to compare the seam with it.',
  },
  'neck-depth': {
    holds: 'The V ends above the bust line',
    change: () => 'The V reaches to the bust line or near it: make it shallower, or wear something beneath.',
    measure: 'Measure the scye depth to know where the V ends.',
  },
  'sleeve-taper': {
    holds: 'The sleeve narrows gently',
    change: () =>
      'The sleeve narrows steeply: a wider cuff, a shallower armhole or a longer sleeve would be easier to shape.',
    measure: 'Measure nape to cuff and the wrist.',
  },
  'front-and-back': {
    holds: 'Front and back can be the same length',
    change: () =>
      'The front of the body is longer than the back: work short rows across the front, or it will ride up.',
    measure: 'Measure front and back waist length to know whether short rows help.',
  },
  seam: {
    holds: 'The edges that join are alike',
    change: (by) => `The edges that join are alike ${by}: ease one into the other, or work one again.`,
    measure: 'Enter both pieces of the seam.',
  },
  'nape-to-cuff': {
    holds: 'The sleeve as made reaches the cuff as wished',
    change: (by) => `The sleeve as made reaches the cuff as wished ${by}: add to the cuff, or fold it.`,
    measure: 'Measure nape to cuff.',
  },
};

const cm = (mm: number): string => `${(Math.abs(mm) / 10).toFixed(1)} cm`;

/** The line beside a check: for `fails` and `tight` what to change, for `unknown` what to measure. `margin` in mm. */
export function adviceFor(check: CheckName, verdict: Verdict, margin: number, d: Decisions): string {
  const saying = SAYINGS[check];
  switch (verdict) {
    case 'fine':
      return `${saying.holds}.`;
    case 'tight':
      return saying.change(margin < 0 ? `short by ${cm(margin)}` : `with only ${cm(margin)} to spare`, d);
    case 'fails':
      return saying.change(`short by ${cm(margin)}`, d);
    case 'unknown':
      return saying.measure;
    case 'n/a':
      return 'Does not apply to this design.';
  }
}
