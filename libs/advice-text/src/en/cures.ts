import type { Cure, SeamEdges } from '#fit';
import { edgeNames } from './edge-names.ts';
import { oneOf } from './one-of.ts';

/** A cure: what it is, or what stands before it and after it, which those with the same share. */
type Phrase = string | { readonly before?: string; readonly what: string; readonly after?: string };

const makeIt = (what: string): Phrase => ({ before: 'make it ', what });
const choose = (what: string): Phrase => ({ before: 'choose ', what });
const easier = (what: string): Phrase => ({ what, after: ' would be easier to shape' });
const its = (what: string): Phrase => ({ before: 'its ', what, after: ' shallower' });
const sleeveAgain = (what: string): Phrase => ({ before: 'work the sleeve again, with ', what });

const CURES: Readonly<Record<Exclude<Cure, 'measure-edges'>, Phrase>> = {
  'open-neck': 'let the neck open',
  'deeper-neck': makeIt('deeper'),
  'wider-neck': makeIt('wider'),
  'narrower-neck': makeIt('narrower'),
  'narrower-and-deeper-neck': 'make it narrower and deeper',
  'narrower-neck-again': 'work the back again, with a narrower neck',
  'shallower-bands': 'make the bands shallower',
  'another-neckline': choose('another neckline'),
  'another-construction': choose('another construction'),
  'wider-cuff': makeIt('wider'),
  'wider-cuff-than-garment': makeIt('wider than on the garment that fits'),
  'stretchier-rib': 'its rib stretchier',
  'wider-cuff-again': sleeveAgain('a wider cuff'),
  'stretchier-rib-again': sleeveAgain('a stretchier rib'),
  'fold-cuff': 'plan to fold it back',
  'closer-cuff': 'make it closer',
  'stretchier-and-closer-cuff': 'work a stretchier rib and make it closer',
  'more-ease': choose('more ease'),
  'more-ease-than-garment': choose('more ease than the garment that fits has'),
  'less-ease': choose('less ease'),
  'less-ease-than-garment': choose('less ease than the garment that fits has'),
  'fabric-that-stretches-more': choose('a fabric that stretches more'),
  'stretchier-fabric': choose('a stretchier fabric'),
  cardigan: choose('a cardigan'),
  'straight-hem': 'let the hem fall straight',
  'wider-or-stretchier-body-again': 'work the body again, wider or in a fabric that stretches more',
  'wider-or-shorter-body-again': 'work the body again, wider or shorter',
  'longer-body-again': 'work the body again, longer',
  'body-again': 'work the body again',
  'longer-body': makeIt('longer'),
  'shallower-rib-of-body': its('rib'),
  'shallower-armhole-of-body': its('armhole'),
  'shallower-raglan-of-body': its('raglan'),
  'wider-sleeve': 'make the sleeve wider',
  'wider-sleeve-than-garment': 'make the sleeve wider than on the garment that fits',
  'wider-sleeve-again': 'work the sleeve again, wider',
  'deeper-armhole': makeIt('deeper'),
  'deeper-armhole-than-garment': makeIt('deeper than on the garment that fits'),
  'deeper-armhole-again': 'work the body again, with a deeper armhole',
  'higher-cap-again': 'work the sleeve again, with a higher cap',
  'wider-top-again': 'work the sleeve again, wider at its top',
  'longer-sleeve': choose('a longer sleeve'),
  'longer-sleeve-again': 'work the sleeve again, longer',
  'longer-or-wider-sleeve-again': 'work the sleeve again, longer or wider at the cuff',
  'shallower-rib': choose('a shallower rib'),
  'wider-cuff-for-taper': easier('a wider cuff'),
  'shallower-armhole-for-taper': easier('a shallower armhole'),
  'shallower-raglan-for-taper': easier('a shallower raglan'),
  'longer-sleeve-for-taper': easier('a longer sleeve'),
  'shorter-length': choose('a shorter length'),
  'own-length-shorter-than-garment': choose('a length of your own, shorter than the garment that fits'),
  'measure-back-waist': 'measure back waist length, which tells whether the body comes down to the hip',
  'measure-that': 'measure that',
  'measure-that-to-be-sure': 'measure that to be sure',
  'measure-that-before-short-rows': 'measure that before you decide on short rows',
  'measure-waist-lengths': 'measure front and back waist length with care before you decide on short rows',
  'compare-sweater': 'compare it with a sweater that fits',
  'shallower-v': 'make it shallower',
  'wear-something-beneath': 'wear something beneath',
  'short-rows': 'work short rows across the front',
  'short-rows-again': 'work the front again, with short rows across it',
  'ease-in': 'ease one into the other',
  'one-edge-again': 'work one again',
  'try-on': 'try it on before you add to the cuff or fold it',
  'add-to-cuff': 'add to the cuff',
  'fold-made-cuff': 'fold the cuff',
  'leave-some-cuff-out': 'leave some of it out',
};

/** What to do: cures that begin and end alike are one phrase, "choose more ease or a cardigan"; the others are joined by ", or". */
export function curesText(cures: readonly Cure[], edges: SeamEdges | null): string {
  const phrases: string[] = [];
  for (let i = 0; i < cures.length; i++) {
    const cure = phraseOf(cures[i]!, edges);
    if (typeof cure === 'string') {
      phrases.push(cure);
      continue;
    }
    const { before = '', after = '' } = cure;
    const alike = [cure.what];
    while (i + 1 < cures.length) {
      const next = phraseOf(cures[i + 1]!, edges);
      if (typeof next === 'string' || (next.before ?? '') !== before || (next.after ?? '') !== after) break;
      alike.push(next.what);
      i++;
    }
    phrases.push(`${before}${oneOf(alike)}${after}`);
  }
  return phrases.join(', or ');
}

function phraseOf(cure: Cure, edges: SeamEdges | null): Phrase {
  if (cure !== 'measure-edges') return CURES[cure];
  return `measure ${edges === null ? 'them' : edgeNames[edges]} again before you sew them`;
}
