import type { Construction } from '#garment';
import type { Catalogue } from '../catalogue.ts';
import type { PrintedCodes } from '../printed-codes.ts';
import { inWords } from './in-words.ts';

const FROM = { hem: 'from the hem up', cuff: 'from the cuff up', edge: 'from its picked-up edge' } as const;
const NECKS = { crew: 'crew neck', v: 'V neck', boat: 'boat neck', scoop: 'scoop neck' } as const;
const CONSTRUCTIONS: Readonly<Record<Construction, string>> = {
  'drop-shoulder': 'Drop shoulder',
  'squared-drop': 'Squared drop',
  'set-in': 'Set-in',
  raglan: 'Raglan',
};
const BASIS = {
  body: 'from the body’s measures',
  garment: 'from a garment that fits',
  both: 'from the body and a garment that fits',
} as const;
const THICKNESS = { measured: 'measured', yarn: 'from the yarn', category: 'from the yarn’s weight category' } as const;

const percent = (fraction: number): string => `${Math.round(fraction * 100)} %`;

/** The words of a printed or drawn sheet. */
export const printed: Catalogue<PrintedCodes> = {
  untitled: () => 'Target sheet',
  garment: () => 'The finished garment, laid flat',
  checks: () => 'Will it go on, will it stay on',
  collisions: () => 'Wishes that collide',
  cautions: () => 'Take care',
  notes: () => 'Notes',
  legend: ({ tape, unwashed, seamed }) => {
    const shown = `± is the standard uncertainty, “anywhere in” how far a length may be rounded, both in ${tape === 'cm' ? tape : 'inches'}.`;
    if (!unwashed)
      return seamed ? `${shown} “Seamed” is with the seam allowance; the other lengths leave it out.` : shown;
    const grows = `${shown} “Unwashed” is what comes off the needles or hook: go by it only with a gauge from an unwashed swatch.`;
    return seamed
      ? `${grows} It holds the seam allowance; the other lengths leave it out, so add it at every edge that is sewn.`
      : grows;
  },
  'drawing-legend': ({ tape }) => `${tape === 'cm' ? 'Centimetres' : 'Inches'}, as worn, drawn to scale`,
  piece: ({ piece, make, mirrored, workedFrom }) => {
    const mirror = mirrored > 0 ? `, ${mirrored} of them mirrored` : '';
    return `${inWords(piece)}: make ${make}${mirror}, ${FROM[workedFrom]}`;
  },
  collision: ({ wishes: [one, other], dimension }) => `${one}, and ${other} (${inWords(dimension)}).`,
  origin: ({ id, day, rules }) => `Sheet ${id}, made ${day}, rules ${rules}.`,
  chosen: ({ construction, silhouette, length, neckline, basis }) => {
    const long = length === 'custom' ? 'own length' : length;
    return `${CONSTRUCTIONS[construction]} ${silhouette}, ${long}, ${NECKS[neckline]}; ${BASIS[basis]}.`;
  },
  ease: ({ ofGarment, ease, category, place }) => {
    const where = place === null ? '' : `, ${percent(place)} into its band`;
    const band = category === null ? '' : ` (${inWords(category)}${where})`;
    return `Ease ${ofGarment ? 'of the garment that fits' : 'chosen at the chest'}: ${ease}${band}.`;
  },
  'wears-like': ({ ease, lies }) => `As advised it wears like ${ease}${lies === null ? '' : `: ${inWords(lies)}`}.`,
  'room-left': ({ room }) => `Room left inside: ${room}.`,
  'smaller-inside': ({ by }) => `Inside it is ${by} smaller than what it goes round.`,
  'chance-of-band': ({ chance }) => `Chance that it comes out in the chosen band: ${percent(chance)}.`,
  fabric: ({ thicknessMm, uMm, from }) =>
    `Fabric ${thicknessMm.toFixed(1)} mm thick, ± ${uMm.toFixed(1)} (${THICKNESS[from]}).`,
  'does-not-apply': () => 'does not apply: ',
  'at-most': ({ difference, most }) => `difference ${difference}, at most ${most}`,
  'chance-of-failing': ({ chance }) => `chance of failing ${percent(chance)}`,
};
