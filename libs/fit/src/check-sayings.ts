import type { BodyDimension } from '#body';
import type { CheckName } from './advice.ts';
import { type CheckRule, isComfort } from './check-rules.ts';
import { type Decisions, isDropped } from './decisions.ts';
import { waistOf } from './governed.ts';
import { lengthWords } from './length-words.ts';
import { bodyStands, frontStands, isMade, sleeveStands } from './made.ts';
import { worstEdges } from './seams.ts';
import { type Row, S } from './slots.ts';
import type { Field } from './trial.ts';

/**
 * What the words of a check may hang on; `ease` tells which way of it makes the margin larger, if any does, and whether it is that
 * of the garment that fits; `doubtful` which measure, not taken, alone leaves it in doubt; `offered` whether a remedy changes a
 * field; `holdsSurely` whether a check before it is fine. Margin in mm.
 */
export interface Situation {
  readonly v: Row;
  readonly d: Decisions;
  readonly margin: number;
  readonly ease: { readonly way: 'more' | 'less'; readonly ofGarment: boolean } | null;
  readonly doubtful: BodyDimension | null;
  readonly offered: (field: Field) => boolean;
  readonly holdsSurely: (check: CheckName) => boolean;
}

type Told = string | ((at: Situation) => string);

/** What a check says: where it holds, where it does not, what to change then, and what a measure that is missing would tell. */
export interface Saying {
  readonly holds: string;
  /** Said with the missing length, where that is a length. */
  readonly fails: Told;
  readonly change: Told;
  /** Said instead of “measure that, or” and the change, where a measure that was not taken is what leaves it in doubt. */
  readonly measureFirst?: string;
  /** Said after “Measure … to know”. */
  readonly toKnow: string;
  /** Said where the fabric’s stretch is not known, if not that it fails, by how much, unless the fabric stretches. */
  readonly unstretched?: Told;
  /** Neither how much is missing nor how much is spare tells anything. */
  readonly unmeasured?: true;
}

export const told = (words: Told, at: Situation): string => (typeof words === 'string' ? words : words(at));

/** "A", "A or B", "A, B or C"; what does not help is left out. */
function oneOf(...cures: readonly (string | false)[]): string {
  const all = cures.filter((cure) => cure !== false);
  const last = all.pop()!;
  return all.length === 0 ? last : `${all.join(', ')} or ${last}`;
}

/** "More ease", where that way helps; with a garment that fits it is told by that one. */
const easeThat = (way: 'more' | 'less', ease: Situation['ease']): string | false =>
  ease?.way === way && `${way} ease${ease.ofGarment ? ' than the garment that fits has' : ''}`;

/** What is taken over from a garment that fits has no field of its own. */
const thanTheGarment = (taken: boolean): string => (taken ? ' than on the garment that fits' : '');

/** A neck that opens. A baby’s needs no buttons to come off in a mouth; a raglan vest has no seam there. */
export function openingOf({ construction, figure, silhouette }: Decisions): string | null {
  const raglan = construction === 'raglan';
  if (raglan && silhouette === 'vest') return null;
  if (figure === 'baby') return `let ${raglan ? 'a raglan seam' : 'the shoulders'} overlap and open, without buttons`;
  return `leave ${raglan ? 'a raglan seam' : 'a shoulder'} open with buttons`;
}

/** A rib that stretches by less beyond the hand than this passes no hand that a closer cuff would stay above (assumed). */
const RIB_TO_SPARE = 1.05;

/** A body already made has its width and its fabric. */
function widerBody(d: Decisions, choices: string): string {
  return bodyStands(d) ? 'work the body again, wider or in a fabric that stretches more' : `choose ${choices}`;
}

/** A hem that follows the hip, and is narrower than the body above it. */
export const hemIsNarrowest = (v: Row, d: Decisions): boolean =>
  d.hem === 'tapered' && d.hipReached && v[S.hemInner]! < v[S.bodyInner]! - 1e-6;

const SAYINGS: Readonly<Record<CheckName, Saying>> = {
  'head-through-neck': {
    holds: 'The neck passes the head',
    fails: 'The neck will not pass the head',
    change: ({ d, offered }) => {
      const sizes = [offered('frontNeckDepthMm') && 'deeper', offered('neckWidthMm') && 'wider'];
      const cures = [sizes.some(Boolean) && `make it ${oneOf(...sizes)}`, openingOf(d)].filter(Boolean);
      return cures.length > 0 ? cures.join(', or ') : 'choose another neckline';
    },
    toKnow: 'whether the neck passes the head',
  },
  'hand-through-cuff': {
    holds: 'The cuff passes the hand',
    fails: 'The cuff will not pass the hand',
    change: ({ d }) =>
      sleeveStands(d)
        ? 'work the sleeve again, with a wider cuff or a stretchier rib'
        : `make it wider${thanTheGarment(d.taken.wrist)}, or its rib stretchier`,
    toKnow: 'whether the cuff passes the hand',
  },
  'cuff-stays': {
    holds: 'The cuff stays above the hand',
    fails: ({ d, margin }) => {
      if (margin > -d.rules['length-room']) return 'The cuff is about as wide as the hand and may slide over it';
      return `The cuff is ${lengthWords(margin, d.tape)} wider round than the hand and will slide over it`;
    },
    // A rib that gives too little passes no hand that would keep it up; and a cuff that passes none is no closer made.
    change: ({ d, holdsSurely }) => {
      if (sleeveStands(d)) return 'plan to fold it back';
      if (1 + d.ribUsable < RIB_TO_SPARE * d.rules['hand-tucked'] || !holdsSurely('hand-through-cuff'))
        return 'plan to fold it back, or work a stretchier rib and make it closer';
      return 'make it closer, or plan to fold it back';
    },
    toKnow: 'whether the cuff stays above the hand',
    unmeasured: true,
  },
  'upper-arm': {
    holds: 'The sleeve clears the upper arm',
    fails: 'The sleeve is too close for the upper arm',
    change: ({ d, ease }) => {
      if (d.made.sleeveTop) return 'work the sleeve again, wider';
      if (isDropped(d) && bodyStands(d)) return 'work the body again, with a deeper armhole';
      const cures = [!bodyStands(d) && easeThat('more', ease), d.closeFitting && 'a fabric that stretches more'];
      if (cures.some(Boolean)) return `choose ${oneOf(...cures)}`;
      return `make the sleeve wider${thanTheGarment(d.taken.upperArm)}`;
    },
    toKnow: 'whether the sleeve clears the upper arm',
  },
  armhole: {
    holds: 'The armhole clears the shoulder',
    fails: 'The armhole is too close for the shoulder',
    change: ({ d }) => {
      if (bodyStands(d)) return 'work the body again, with a deeper armhole';
      if (isMade(S.armhole, d))
        return `work the sleeve again, ${d.made.cap ? 'with a higher cap' : 'wider at its top'}`;
      return `make it deeper${thanTheGarment(d.taken.armhole)}`;
    },
    toKnow: 'whether the armhole clears the shoulder',
  },
  'over-the-shoulders': {
    holds: 'It goes on over the shoulders',
    fails: 'It will not go on over the shoulders',
    change: ({ v, d, ease }) => {
      const straight = hemIsNarrowest(v, d) ? 'let the hem fall straight, or ' : '';
      return `${straight}${widerBody(d, oneOf(easeThat('more', ease), 'a stretchier fabric', 'a cardigan'))}`;
    },
    toKnow: 'whether it goes on over the shoulders',
  },
  hip: {
    holds: 'The hem clears the hip',
    fails: 'The hem is too close for the hip',
    change: (at) => roomForTheHip(at),
    toKnow: 'whether the hem clears the hip',
  },
  'negative-ease': {
    holds: 'The fabric stretches as far as this close fit asks',
    fails: (at) => `${told(smaller, at)}, and its fabric does not stretch as far as that`,
    change: ({ d, ease }) => widerBody(d, oneOf(easeThat('more', ease), 'a stretchier fabric')),
    unstretched: smaller,
    toKnow: 'whether the fabric has to stretch',
    unmeasured: true,
  },
  'neck-on-shoulders': {
    holds: 'The neck stays on the shoulders',
    fails: 'The neck is too wide to stay on the shoulders',
    change: narrowerNeck,
    toKnow: 'whether the neck stays on the shoulders',
  },
  'body-below-underarm': {
    holds: 'There is body below the underarm',
    fails: 'There is too little body below the underarm',
    change: (at) => {
      const { d, offered } = at;
      if (bodyStands(d)) return 'work the body again, longer';
      const shallower = [offered('ribMm') && 'rib', spareArmhole(at) && armholeOf(d)];
      return shallower.some(Boolean) ? `make it longer, or its ${oneOf(...shallower)} shallower` : 'make it longer';
    },
    toKnow: 'how much body there is below the underarm',
  },
  'sleeve-below-underarm': {
    holds: 'There is sleeve below the underarm',
    fails: 'There is too little sleeve below the underarm',
    change: ({ d, ease, offered }) => {
      if (sleeveStands(d)) return 'work the sleeve again, longer';
      const less = !bodyStands(d) && easeThat('less', ease);
      return `choose ${oneOf(less, offered('ribMm') && 'a shallower rib', 'a longer sleeve')}`;
    },
    toKnow: 'how much sleeve there is below the underarm',
  },
  'under-the-arm': {
    holds: 'The seam under the arm is about the arm’s own length',
    fails: 'The seam under the arm differs from the arm’s own length, so it may pull when the arm is raised, or fold',
    change: 'compare it with a sweater that fits',
    toKnow: 'whether the seam under the arm is about the arm’s own length',
    unmeasured: true,
  },
  'neck-depth': {
    holds: 'The V ends above the fullest part of the chest',
    fails: 'The V reaches to the fullest part of the chest or near it',
    change: ({ offered }) =>
      offered('frontNeckDepthMm') ? 'make it shallower, or wear something beneath' : 'wear something beneath',
    toKnow: 'where the V ends',
    unmeasured: true,
  },
  'sleeve-taper': {
    holds: 'The sleeve narrows gently',
    fails: 'The sleeve narrows steeply',
    change: (at) => {
      const { v, d } = at;
      if (sleeveStands(d)) return 'work the sleeve again, longer or wider at the cuff';
      const cures = [
        v[S.cuffHave]! > v[S.cuffNeed]! && 'a wider cuff',
        spareArmhole(at) && `a shallower ${armholeOf(d)}`,
        'a longer sleeve',
      ];
      return `${oneOf(...cures)} would be easier to shape`;
    },
    measureFirst: 'measure that to be sure',
    toKnow: 'how steeply the sleeve narrows',
    unmeasured: true,
  },
  'front-and-back': {
    holds: 'Front and back can be the same length',
    fails: 'The front of the body is longer than the back, and the sweater’s would ride up',
    change: ({ d, margin }) => {
      if (margin >= 0) return 'measure front and back waist length with care before you decide on short rows';
      return frontStands(d) ? 'work the front again, with short rows across it' : 'work short rows across the front';
    },
    measureFirst: 'measure that before you decide on short rows',
    toKnow: 'whether short rows help',
    unmeasured: true,
  },
  seam: {
    holds: 'The edges that join are alike',
    fails: ({ v, d }) => {
      const [first, ...rest] = worstEdges(v, d);
      return `${first!.toUpperCase()}${rest.join('')} differ by ${lengthWords(v[S.seamNeed]!, d.tape)}`;
    },
    change: ({ v, d, margin }) =>
      margin < 0
        ? 'ease one into the other, or work one again'
        : `measure ${worstEdges(v, d)} again before you sew them`,
    toKnow: 'whether the edges join',
    unmeasured: true,
  },
  'nape-to-cuff': {
    holds: 'The sleeve as made reaches the cuff as wished',
    fails: ({ v, d }) => {
      const past = v[S.cuffPast]!;
      return `The sleeve as made ends ${lengthWords(past, d.tape)} ${past < 0 ? 'short of' : 'past'} the cuff as wished`;
    },
    change: ({ v, margin }) => {
      if (margin >= 0) return 'try it on before you add to the cuff or fold it';
      return v[S.cuffPast]! < 0 ? 'add to the cuff' : 'fold the cuff, or leave some of it out';
    },
    toKnow: 'whether the sleeve as made reaches the cuff',
    unmeasured: true,
  },
};

/** What an armhole is called. */
const armholeOf = ({ construction }: Decisions): string => (construction === 'raglan' ? 'raglan' : 'armhole');

/** Whether an armhole is still to be worked, and has room to spare as far as is known. */
const spareArmhole = ({ v, d, holdsSurely }: Situation): boolean =>
  !bodyStands(d) &&
  !isMade(S.armhole, d) &&
  (holdsSurely('armhole') || Number.isNaN(v[S.armholeHave]! - v[S.armholeNeed]!));

/** A wider body or a shorter one; where it is not known how far down the hip is, the measure that tells. */
function roomForTheHip({ v, d, ease }: Situation): string {
  if (bodyStands(d)) return 'work the body again, wider or shorter';
  const unknown = Number.isNaN(waistOf(v, d.rules)) && (d.length === 'custom' || d.taken.length);
  const shorter = d.taken.length ? 'a length of your own, shorter than the garment that fits' : 'a shorter length';
  const cures = [easeThat('more', ease), d.closeFitting && 'a stretchier fabric', !unknown && shorter];
  const further = unknown && 'measure back waist length, which tells whether the body comes down to the hip';
  return [cures.some(Boolean) && `choose ${oneOf(...cures)}`, further].filter(Boolean).join(', or ');
}

/** A neck that is too wide, and for the head or the neck itself may have to be deeper for it. */
function narrowerNeck({ d, offered }: Situation): string {
  if (bodyStands(d)) return 'work the back again, with a narrower neck';
  const cures = [offered('neckWidthMm') && 'make it narrower', offered('bandMm') && 'make the bands shallower'];
  return cures.some(Boolean) ? cures.filter(Boolean).join(', or ') : 'make it narrower and deeper';
}

/** Where it is what is worn beneath that fills it, the body alone is not to blame. */
function smaller({ v }: Situation): string {
  return `The garment is smaller than the body${v[S.layer]! > 0 ? ' and what is worn beneath' : ''}`;
}

/** Of a raglan with nothing made: how its two rises compare, whatever joins them. */
const RAGLAN_RISES: Saying = {
  holds: 'The raglan rises alike on sleeve and body',
  fails: 'The raglan rises much more on one of sleeve and body than on the other, so that one puckers',
  change: ({ d, ease }) => {
    const whole = bodyStands(d) || sleeveStands(d);
    const cures = [!whole && (easeThat('more', ease) || easeThat('less', ease)), !whole && 'another construction'];
    return cures.some(Boolean) ? `choose ${oneOf(...cures)}` : 'ease one into the other, or work the body again';
  },
  toKnow: 'whether the raglan rises alike on sleeve and body',
  unmeasured: true,
};

/** Of a neck that leaves less than a shoulder, though it is not wider than the back carries. */
const SHOULDER_LEFT: Saying = {
  holds: 'There is shoulder enough beside the neck',
  fails: 'Too little shoulder is left beside the neck',
  change: narrowerNeck,
  toKnow: 'how much shoulder is left beside the neck',
};

/** What a check says in this garment. */
export function sayingOf(rule: CheckRule, v: Row, d: Decisions): Saying {
  if (rule.check === 'seam' && isComfort(rule, d)) return RAGLAN_RISES;
  const ofShoulder = d.construction !== 'raglan' && v[S.spareOfShoulder]! < v[S.spareBesideNeck]!;
  if (rule.check === 'neck-on-shoulders' && ofShoulder) return SHOULDER_LEFT;
  return SAYINGS[rule.check];
}
