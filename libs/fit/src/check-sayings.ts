import type { CheckName } from './advice.ts';
import { type CheckRule, isComfort } from './check-rules.ts';
import type { Decisions } from './decisions.ts';
import { lengthWords } from './length-words.ts';
import { type Row, S } from './slots.ts';

/** What the words of a check may hang on; `ease` tells which way of it makes the margin larger, if any does. Margin in mm. */
export interface Situation {
  readonly v: Row;
  readonly d: Decisions;
  readonly margin: number;
  readonly ease: 'more' | 'less' | null;
}

type Told = string | ((at: Situation) => string);

/** What a check says: where it holds, where it does not, what to change then, and what to measure where it is not known. */
export interface Saying {
  readonly holds: string;
  /** Said with the missing length, where that is a length. */
  readonly fails: Told;
  readonly change: Told;
  readonly measure: string;
  /** Said where the fabric’s stretch is not known, if not that it fails, by how much, unless the fabric stretches. */
  readonly unstretched?: Told;
  /** Neither how much is missing nor how much is spare tells anything. */
  readonly unmeasured?: true;
}

export const told = (words: Told, at: Situation): string => (typeof words === 'string' ? words : words(at));

export const bodyMade = ({ made }: Decisions): boolean => made.back || made.front;

/** "A", "A or B", "A, B or C"; what does not help is left out. */
function oneOf(...cures: readonly (string | false)[]): string {
  const all = cures.filter((cure) => cure !== false);
  const last = all.pop()!;
  return all.length === 0 ? last : `${all.join(', ')} or ${last}`;
}

const moreEase = (ease: Situation['ease']): string | false => ease === 'more' && 'more ease';

/** A body already made has its width and its fabric. */
function widerBody(d: Decisions, choices: string): string {
  return bodyMade(d) ? 'work the body again, wider or in a fabric that stretches more' : `choose ${choices}`;
}

/** A hem that follows the hip, and is narrower than the body above it. */
export const hemIsNarrowest = (v: Row, d: Decisions): boolean =>
  d.hem === 'tapered' && d.hipReached && v[S.hemInner]! < v[S.bodyInner]! - 1e-6;

/** A hem that could follow the hip and be wider for it. */
export const hemCouldWiden = (v: Row, d: Decisions): boolean =>
  d.hem === 'straight' && v[S.hipFlat]! > v[S.hemFlat]! + 1e-6;

const SAYINGS: Readonly<Record<CheckName, Saying>> = {
  'head-through-neck': {
    holds: 'The neck passes the head',
    fails: 'The neck will not pass the head',
    change: ({ d }) =>
      `make it ${d.made.neckWidth ? 'deeper' : 'deeper or wider'}, or leave a shoulder open with buttons`,
    measure: 'Measure the head and the neck base to know whether the neck passes.',
  },
  'hand-through-cuff': {
    holds: 'The cuff passes the hand',
    fails: 'The cuff will not pass the hand',
    change: ({ d }) =>
      d.made.cuff ? 'work it again, wider or in a stretchier rib' : 'make it wider, or its rib stretchier',
    measure: 'Measure the hand and the wrist to know whether the cuff passes.',
  },
  'cuff-stays': {
    holds: 'The cuff stays above the hand',
    fails: 'The cuff is about as wide as the hand and may slide over it',
    // A rib that gives too little passes no hand that would keep it up; and a cuff that passes none is no closer made.
    change: ({ v, d }) => {
      if (1 + d.ribUsable < d.rules['hand-tucked'] || v[S.handHave]! < v[S.handNeed]!)
        return 'plan to fold it back, or work a stretchier rib';
      return d.made.cuff ? 'plan to fold it back' : 'make it closer, or plan to fold it back';
    },
    measure: 'Measure the hand and the wrist to know whether the cuff stays up.',
    unmeasured: true,
  },
  'upper-arm': {
    holds: 'The sleeve clears the upper arm',
    fails: 'The sleeve is too close for the upper arm',
    change: ({ d, ease }) => {
      if (d.made.sleeveTop) return 'work the sleeve again, wider';
      const cures = [moreEase(ease), d.closeFitting && 'a fabric that stretches more'];
      return cures.some(Boolean) ? `choose ${oneOf(...cures)}` : 'make the sleeve wider';
    },
    measure: 'Measure the upper arm; for a close fit, pull the swatch across and measure its stretch too.',
  },
  armhole: {
    holds: 'The armhole clears the shoulder',
    fails: 'The armhole is too close for the shoulder',
    change: ({ d }) => (d.made.armhole ? 'work it again, deeper' : 'make it deeper'),
    measure: 'Measure the scye girth; for a close fit, the swatch’s stretch too.',
  },
  'over-the-shoulders': {
    holds: 'It goes on over the shoulders',
    fails: 'It will not go on over the shoulders',
    change: ({ v, d, ease }) => {
      const straight = hemIsNarrowest(v, d) ? 'let the hem fall straight, or ' : '';
      return `${straight}${widerBody(d, oneOf(moreEase(ease), 'a stretchier fabric', 'a cardigan'))}`;
    },
    measure: 'Measure the shoulder girth.',
  },
  hip: {
    holds: 'The hem clears the hip',
    fails: 'The hem is too close for the hip',
    change: ({ v, d, ease }) =>
      `choose ${oneOf(
        hemCouldWiden(v, d) && 'a tapered hem',
        !bodyMade(d) && moreEase(ease),
        d.closeFitting && !bodyMade(d) && 'a stretchier fabric',
        'a shorter length',
      )}`,
    measure: 'Measure the hip; for a close fit, the swatch’s stretch too.',
  },
  'negative-ease': {
    holds: 'The fabric stretches as far as this close fit asks',
    fails: (at) => `${told(smaller, at)}, by about all that its fabric stretches or more`,
    change: ({ d, ease }) => widerBody(d, oneOf(moreEase(ease), 'a stretchier fabric')),
    unstretched: smaller,
    measure: 'Measure the chest to know whether the fabric has to stretch.',
    unmeasured: true,
  },
  'neck-on-shoulders': {
    holds: 'The neck stays on the shoulders',
    fails: 'The neck is too wide to stay on the shoulders',
    change: ({ d }) => (d.made.neckWidth ? 'work it again, narrower' : 'make it narrower'),
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
    change: ({ ease }) => `choose ${oneOf(ease === 'less' && 'less ease', 'a shallower rib', 'a longer sleeve')}`,
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
    change: ({ margin }) =>
      margin < 0
        ? 'work short rows across the front'
        : 'measure front and back waist length with care before you decide on short rows',
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
    fails: ({ v, d }) => {
      const past = v[S.reachedNapeToCuff]! - v[S.napeToCuff]!;
      return `The sleeve as made ends ${lengthWords(past, d.tape)} ${past < 0 ? 'short of' : 'past'} the cuff as wished`;
    },
    change: ({ v, margin }) => {
      if (margin >= 0) return 'add to the cuff, or fold it';
      return v[S.reachedNapeToCuff]! < v[S.napeToCuff]! ? 'add to the cuff' : 'fold the cuff, or leave some of it out';
    },
    measure: 'Measure nape to cuff.',
    unmeasured: true,
  },
};

/** Where it is what is worn beneath that fills it, the body alone is not to blame. */
function smaller({ v }: Situation): string {
  return `The garment is smaller than the body${v[S.layer]! > 0 ? ' and what is worn beneath' : ''}`;
}

/** Of a raglan with nothing made: how its two rises compare, whatever joins them. */
const RAGLAN_RISES: Saying = {
  holds: 'The raglan rises alike on sleeve and body',
  fails: 'The raglan rises much more on one of sleeve and body than on the other, so that one puckers',
  change: ({ ease }) => `choose ${oneOf(ease !== null && `${ease} ease`, 'another construction')}`,
  measure: 'Measure the scye depth and the upper arm.',
  unmeasured: true,
};

/** Of a neck that leaves less than a shoulder, though it is not wider than the back carries. */
const SHOULDER_LEFT: Saying = {
  holds: 'There is shoulder enough beside the neck',
  fails: 'Too little shoulder is left beside the neck',
  change: ({ d }) => (d.made.neckWidth ? 'work the neck again, narrower' : 'make the neck narrower'),
  measure: 'Measure across the back to know how much shoulder is left beside the neck.',
};

/** What a check says in this garment. */
export function sayingOf(rule: CheckRule, v: Row, d: Decisions): Saying {
  if (rule.check === 'seam' && isComfort(rule, d)) return RAGLAN_RISES;
  const ofShoulder = d.construction !== 'raglan' && v[S.spareOfShoulder]! < v[S.spareBesideNeck]!;
  if (rule.check === 'neck-on-shoulders' && ofShoulder) return SHOULDER_LEFT;
  return SAYINGS[rule.check];
}
