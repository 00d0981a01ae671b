import type { NoteCodes } from '#fit';
import type { Catalogue, Reader } from '../catalogue.ts';
import { lengthWords } from '../length-words.ts';
import { say } from '../say.ts';
import { ease } from './ease.ts';
import { inWords } from './in-words.ts';
import { noAdvice } from './no-advice.ts';
import { closings, openPlace } from './openings.ts';

/** What is said of a sheet as a whole. */
export const notes: Catalogue<NoteCodes> = {
  weight: ({ grams, allDrawn }) => {
    const drawn = allDrawn ? 'The pieces weigh' : 'The pieces that have a shape weigh';
    return `${drawn} about ${Math.round(grams / 10) * 10} g.`;
  },
  heavy: ({ aboveGrams }) =>
    `Above ${aboveGrams} g long pieces drop as they hang: hang the swatch with a weight before measuring it, or make the lengths a little short.`,
  'hip-governs': ({ wider, outOfBand }, reader) => {
    const what =
      wider === 'hip' ? 'the hip is wider than the chest' : 'the garment that fits is wider there than at its chest';
    return `The hem is straight, and ${what}: that sets the width of the whole body.${outOfBandText(outOfBand, reader)}`;
  },
  'garment-beside-tape': ({ garment, measure, moreMm, uMm }, reader) =>
    `By the ${inWords(measure)} of ${garmentWords(garment)} the body would be ${bodyBeside(moreMm, uMm, reader)} there than your own measures say. Does it fit as you said, and was it measured flat? Until you have checked, your own measures count.`,
  'garments-apart': ({ garments: [one, other], measure, moreMm, uMm }, reader) =>
    `By the ${inWords(measure)} of ${garmentWords(other)} the body would be ${bodyBeside(moreMm, uMm, reader)} there than by that of ${garmentWords(one)}. Does each fit as you said? Until you have checked, both count for less.`,
  'ease-of-favourites': ({ count, meanMm, sdMm }, reader) =>
    `Ease as in the ${count} garments that you like to wear: ${lengthWords(meanMm, reader.tape)}, give or take ${lengthWords(sdMm, reader.tape)}.`,
  'worn-stretched': ({ share }) => {
    const percent = Math.round(share * 100);
    const by = percent < 1 ? 'a little' : `by ${percent} %`;
    return `The garment that fits is worn stretched: the new fabric must stretch ${by} all the time.`;
  },
  'garment-measure-waits': ({ given, lacking }) =>
    `The ${inWords(given)} of the garment that fits is not used without its ${inWords(lacking)}: measure that too, and its way from nape to cuff is kept.`,
  'squared-as-drop': ({ hardlyWider }) =>
    `The body is ${hardlyWider ? 'hardly' : 'no'} wider than the back: a squared drop would have no inset, so this is a drop shoulder.`,
  'neck-widened': (params) => {
    const why = params.keptByShoulders
      ? ': the shoulders carry no wider one, and the head is to pass.'
      : ', so that the head passes.';
    return `The neck is ${neckGrown(params)} than its rule${why}`;
  },
  'neck-opens': ({ lengthMm, closing, ...opens }, { tape }) =>
    `The neck opens ${openPlace(opens)} for ${lengthWords(lengthMm, tape)}${opens.at === 'shoulders' ? ' each' : ''}: ${closings[closing]}.`,
  'opening-ends': ({ askedMm, lengthMm, ...opens }, { tape }) =>
    `There is no room ${openPlace(opens)} for an opening of ${lengthWords(askedMm, tape)}: it ends after ${lengthWords(lengthMm, tape)}.`,
  'opening-needless': () => 'A cardigan is open in front already, so its neck gets no other opening.',
  'opening-at-back': () => 'A raglan vest has no seam beside its neck that could open, so the opening is at the back.',
  'band-ends': ({ askedMm, depthMm }, { tape }) =>
    `A band of ${lengthWords(askedMm, tape)} would leave no shoulder beside the neck, so it is ${lengthWords(depthMm, tape)} deep.`,
  'neck-tight': ({ shorterMm }, { tape }) =>
    `The neck’s finished edge is ${lengthWords(shorterMm, tape)} shorter than the neck is round, and may sit tight: make it wider or deeper.`,
  'raglan-vest': () =>
    'A raglan has no shoulders of its own: with no sleeves between them, nothing joins the front to the back above the underarm. For a vest choose a set-in, or join the slanted edges with straps.',
  'no-sleeve': noAdvice['no-sleeve'],
};

function outOfBandText(out: NoteCodes['hip-governs']['outOfBand'], reader: Reader): string {
  if (out === null) return '';
  const { lies, chosen, taperedKeepsBoth } = out;
  const tapered = taperedKeepsBoth ? '; a tapered hem keeps both' : '';
  return ` At the chest that is ${say(ease, lies, reader)}, not ${inWords(chosen)}${tapered}.`;
}

/** A garment by what its maker calls it, or by its number among those given. */
const garmentWords = (name: string): string => (/^\d+$/.test(name) ? `garment ${name}` : `“${name}”`);

/** "3 cm smaller (± 1 cm)" */
const bodyBeside = (moreMm: number, uMm: number, { tape }: Reader): string =>
  `${lengthWords(moreMm, tape)} ${moreMm < 0 ? 'smaller' : 'larger'} (± ${lengthWords(uMm, tape)})`;

/** By how much a neck was made larger: as a whole, or which parts of it. */
function neckGrown({ widthPercent, frontPercent, backPercent }: NoteCodes['neck-widened']): string {
  const sameDepth = frontPercent === backPercent;
  if (widthPercent > 0 && widthPercent === frontPercent && sameDepth) return `${widthPercent} % larger`;
  const parts: string[] = [];
  if (widthPercent !== 0) parts.push(`${Math.abs(widthPercent)} % ${widthPercent > 0 ? 'wider' : 'narrower'}`);
  if (frontPercent > 0) parts.push(`${frontPercent} % deeper${sameDepth ? '' : ' in front'}`);
  if (backPercent > 0 && !sameDepth) parts.push(`${backPercent} % deeper behind`);
  return parts.join(' and ');
}
