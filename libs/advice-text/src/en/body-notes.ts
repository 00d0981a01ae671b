import type { BodyNoteCodes } from '#body';
import { formatLength, inchesText } from '#measure';
import type { Catalogue } from '../catalogue.ts';
import { say } from '../say.ts';
import { ageText } from './age-text.ts';
import { bodySources } from './body-sources.ts';
import { inWords } from './in-words.ts';
import { bodyQuestions } from './questions.ts';

/** What to do beyond a table's end: some go on in another figure's. */
const BEYOND = {
  woman: { below: 'measure instead', above: 'measure instead' },
  man: { below: 'measure instead', above: 'measure instead' },
  child: { below: 'measure, or say a baby', above: 'measure, or say a woman or a man' },
  baby: { below: 'measure instead', above: 'measure, or say a child' },
} as const;

type Found = BodyNoteCodes['size-row'];

/** Both units, since the tables are printed in inches. */
const lookedUpText = ({ lookedUp }: Pick<Found, 'lookedUp'>): string =>
  lookedUp.by === 'age'
    ? `An age of ${ageText(lookedUp.ageYears)}`
    : `A chest of ${formatLength(lookedUp.chestMm, 'cm')} (${formatLength(lookedUp.chestMm, '[in_i]')})`;

function sizeText({ size, chestMm }: Found['size']): string {
  if (chestMm === null) return size;
  const { lowMm, highMm } = chestMm;
  return lowMm === highMm
    ? `${size} (${inchesText(lowMm)} in)`
    : `${size} (${inchesText(lowMm)} to ${inchesText(highMm)} in)`;
}

/** What there is to know about a body's values. */
export const bodyNotes: Catalogue<BodyNoteCodes> = {
  'not-measured': ({ names, from }, reader) =>
    `Not measured: ${names.map(inWords).join(', ')}. Taken instead: ${say(bodySources, from, reader)}.`,
  'measure-doubtful': ({ question }, reader) => say(bodyQuestions, question, reader),
  'body-model-made-from': ({ youngest, oldest }) =>
    `Estimates come from adult soldiers of ${youngest} to ${oldest}, most of them under 35; stature, weight, waist, hip and upper arm from civilians of 18 to 80 of every size. Nobody pregnant and no child is among them. For a body outside their sizes and ages the model goes on, with wider intervals that rest on assumptions.`,
  'body-model-age': ({ oldest }) =>
    `Nobody over ${oldest} is among those most estimates come from: they are wider for that. Waist, hip and upper arm are corrected for age.`,
  'body-model-size': ({ names }) =>
    `Nobody of this size or age is among those these estimates come from: ${names.map(inWords).join(', ')}. They are wider for that, and rest on assumptions. A tape makes each of them surer.`,
  'no-size-table': () => 'The size tables are for a woman, a man, a child or a baby: say which is nearest.',
  'size-row': ({ size, table, ...found }) => `${lookedUpText(found)} is size ${sizeText(size)} of ${table}.`,
  'between-sizes': ({ smaller, larger, read, table, ...found }) =>
    `${lookedUpText(found)} lies between sizes ${sizeText(smaller)} and ${sizeText(larger)} of ${table}, in neither; ${read} is nearer and was read.`,
  'beyond-sizes': ({ end, side, read, figure, table, ...found }) => {
    const which = side === 'below' ? 'smallest' : 'largest';
    const then = read ? '; that size was read' : `: ${BEYOND[figure][side]}`;
    return `${lookedUpText(found)} lies ${side} ${sizeText(end)}, the ${which} size of ${table}${then}.`;
  },
  'age-assumed': ({ ageYears }) =>
    `The age was not given; ${ageText(ageYears)} is taken from the size, for the head, the wrist and the hand.`,
  'nape-to-cuff-from-arm': ({ armMeasured }) =>
    `Nape to cuff is worked out from the back and the arm, for ${armMeasured ? 'the arm was measured' : 'that of the table is too long for its own arm'}.`,
};
