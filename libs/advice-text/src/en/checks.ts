import type { CheckCode, CheckCodes, CheckFinding, CheckTrouble, SeamEdges } from '#fit';
import type { Craft } from '#fabric';
import type { Catalogue, Reader } from '../catalogue.ts';
import { lengthWords } from '../length-words.ts';
import { curesText } from './cures.ts';
import { edgeNames } from './edge-names.ts';
import { noAdvice } from './no-advice.ts';
import { allOf } from './all-of.ts';
import { inWords } from './in-words.ts';

type DetailsOf<Code extends CheckCode> = CheckCodes[Code] extends CheckFinding<infer Details> ? Details : never;
type Words<Details> = string | ((details: Details, reader: Reader) => string);

/** What a check is about: where it holds, where it does not, and what is known once all measures are there. */
interface Subject<Details> {
  readonly holds: string;
  readonly fails: Words<Details>;
  /** After “to know”. */
  readonly toKnow: string;
}

/** The sentences about one subject. */
const about =
  <Details>(subject: Subject<Details>) =>
  (found: CheckFinding<Details>, reader: Reader): string => {
    switch (found.finding) {
      case 'holds':
        return `${subject.holds}${usualText(found.usualStretch)}.`;
      case 'does-not-apply':
        return 'Does not apply to this design.';
      case 'not-known':
        return found.lack === null
          ? `Measure ${allOf(found.needs.map(inWords))} to know ${subject.toKnow}.`
          : noAdvice[found.lack]({}, reader);
      case 'fails':
      case 'poor':
      case 'barely':
      case 'uncertain':
        return `${findingText(subject, found, reader)}: ${curesText(found.cures, edgesOf(found.details))}.`;
    }
  };

function findingText<Details>(subject: Subject<Details>, found: CheckTrouble<Details>, reader: Reader): string {
  const { finding, details, marginMm, uncertain } = found;
  const amount = marginMm === null ? null : amountText(marginMm, found.of, reader);
  const usual = usualText(found.usualStretch);
  switch (finding) {
    case 'fails':
    case 'poor': {
      const fails = words(subject.fails, details, reader);
      return `${fails}${amount === null ? '' : `, with ${amount} missing`}${usual}`;
    }
    case 'barely':
      return `${subject.holds}, ${amount === null ? 'though not surely' : `with only ${amount} to spare`}${usual}`;
    case 'uncertain': {
      const spare = amount === null ? '' : `, with ${amount} to spare`;
      return `${subject.holds}${spare}${usual}, but ${inWords(uncertain!)} was not measured`;
    }
  }
}

/** Where the stretch counts and was not measured. */
const usualText = (craft: Craft | null): string =>
  craft === null ? '' : ` if the fabric stretches as ${CRAFTED[craft]} usually does`;

const CRAFTED: Readonly<Record<Craft, string>> = { knit: 'knitting', crochet: 'crochet' };

const words = <Details>(of: Words<Details>, details: Details, reader: Reader): string =>
  typeof of === 'string' ? of : of(details, reader);

/** A length, or a girth; less than the tape shows is still something. */
function amountText(marginMm: number, of: 'girth' | 'length', { tape }: Reader): string {
  const length = lengthWords(marginMm, tape);
  if (length === lengthWords(0, tape)) return 'a hair';
  return of === 'girth' ? `${length} of girth` : length;
}

const edgesOf = (details: unknown): SeamEdges | null => (details as { readonly edges?: SeamEdges }).edges ?? null;

/** Where it is what is worn beneath that fills it, the body alone is not to blame. */
const smaller = ({ overLayer }: DetailsOf<'negative-ease'>): string =>
  `The garment is smaller than the body${overLayer ? ' and what is worn beneath' : ''}`;

/** What came of each check, and what to do. */
export const checks: Catalogue<CheckCodes> = {
  'head-through-neck': about({
    holds: 'The neck passes the head',
    fails: 'The neck will not pass the head',
    toKnow: 'whether the neck passes the head',
  }),
  'hand-through-cuff': about({
    holds: 'The cuff passes the hand',
    fails: 'The cuff will not pass the hand',
    toKnow: 'whether the cuff passes the hand',
  }),
  'cuff-stays': about<DetailsOf<'cuff-stays'>>({
    holds: 'The cuff stays above the hand',
    fails: ({ widerMm }, { tape }) =>
      widerMm === null
        ? 'The cuff is about as wide as the hand and may slide over it'
        : `The cuff is ${lengthWords(widerMm, tape)} wider round than the hand and will slide over it`,
    toKnow: 'whether the cuff stays above the hand',
  }),
  'upper-arm': about({
    holds: 'The sleeve clears the upper arm',
    fails: 'The sleeve is too close for the upper arm',
    toKnow: 'whether the sleeve clears the upper arm',
  }),
  armhole: about({
    holds: 'The armhole clears the shoulder',
    fails: 'The armhole is too close for the shoulder',
    toKnow: 'whether the armhole clears the shoulder',
  }),
  'over-the-shoulders': about({
    holds: 'It goes on over the shoulders',
    fails: 'It will not go on over the shoulders',
    toKnow: 'whether it goes on over the shoulders',
  }),
  hip: about({
    holds: 'The hem clears the hip',
    fails: 'The hem is too close for the hip',
    toKnow: 'whether the hem clears the hip',
  }),
  'negative-ease': about<DetailsOf<'negative-ease'>>({
    holds: 'The fabric stretches as far as this close fit asks',
    fails: (details) => `${smaller(details)}, and its fabric does not stretch as far as that`,
    toKnow: 'whether the fabric has to stretch',
  }),
  'neck-on-shoulders': about({
    holds: 'The neck stays on the shoulders',
    fails: 'The neck is too wide to stay on the shoulders',
    toKnow: 'whether the neck stays on the shoulders',
  }),
  'shoulder-beside-neck': about({
    holds: 'There is shoulder enough beside the neck',
    fails: 'Too little shoulder is left beside the neck',
    toKnow: 'how much shoulder is left beside the neck',
  }),
  'body-below-underarm': about({
    holds: 'There is body below the underarm',
    fails: 'There is too little body below the underarm',
    toKnow: 'how much body there is below the underarm',
  }),
  'sleeve-below-underarm': about({
    holds: 'There is sleeve below the underarm',
    fails: 'There is too little sleeve below the underarm',
    toKnow: 'how much sleeve there is below the underarm',
  }),
  'under-the-arm': about({
    holds: 'The seam under the arm is about the arm’s own length',
    fails: 'The seam under the arm differs from the arm’s own length, so it may pull when the arm is raised, or fold',
    toKnow: 'whether the seam under the arm is about the arm’s own length',
  }),
  'neck-depth': about({
    holds: 'The V ends above the fullest part of the chest',
    fails: 'The V reaches to the fullest part of the chest or near it',
    toKnow: 'where the V ends',
  }),
  'sleeve-taper': about({
    holds: 'The sleeve narrows gently',
    fails: 'The sleeve narrows steeply',
    toKnow: 'how steeply the sleeve narrows',
  }),
  'front-and-back': about({
    holds: 'Front and back can be the same length',
    fails: 'The front of the body is longer than the back, and the sweater’s would ride up',
    toKnow: 'whether short rows help',
  }),
  seam: about<DetailsOf<'seam'>>({
    holds: 'The edges that join are alike',
    fails: ({ edges, differMm }, { tape }) => {
      const names = edgeNames[edges];
      return `${names[0]!.toUpperCase()}${names.slice(1)} differ by ${lengthWords(differMm, tape)}`;
    },
    toKnow: 'whether the edges join',
  }),
  'nape-to-cuff': about<DetailsOf<'nape-to-cuff'>>({
    holds: 'The sleeve as made reaches the cuff as wished',
    fails: ({ pastMm }, { tape }) =>
      `The sleeve as made ends ${lengthWords(pastMm, tape)} ${pastMm < 0 ? 'short of' : 'past'} the cuff as wished`,
    toKnow: 'whether the sleeve as made reaches the cuff',
  }),
  'along-the-top': about({
    holds: 'From the neck over the shoulder, the sleeve reaches about to the wrist',
    fails: 'From the neck over the shoulder, the sleeve ends well short of the wrist or well past it',
    toKnow: 'where the sleeve ends',
  }),
  'raglan-slope': about({
    holds: 'The raglan slopes alike on sleeve and body',
    fails: 'The raglan is much steeper on one of sleeve and body than on the other, and one of them may pucker',
    toKnow: 'whether the raglan slopes alike on sleeve and body',
  }),
};
