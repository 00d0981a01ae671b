import type { TargetSheet } from '../target-sheet.ts';
import { decimalText, type MakersUnit } from './length-text.ts';
import { inWords, wrap } from './lines.ts';

const NECKS = { crew: 'crew neck', v: 'V neck', boat: 'boat neck', scoop: 'scoop neck' } as const;
const CONSTRUCTIONS: Readonly<Record<TargetSheet['design']['construction'], string>> = {
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

/** What was chosen, in sentences, of a sheet in mm. */
export function chosenLines({ design, fabric }: TargetSheet, unit: MakersUnit): string[] {
  const length = design.length === 'custom' ? 'own length' : design.length;
  return [
    `${CONSTRUCTIONS[design.construction]} ${design.silhouette}, ${length}, ${NECKS[design.neckline]}; ${BASIS[design.basis]}.`,
    easeText(design, unit),
    `Fabric ${fabric.thickness.toFixed(1)} mm thick, ± ${fabric.u.toFixed(1)} (${THICKNESS[fabric.from]}).`,
  ].flatMap((sentence) => (sentence === '' ? [] : wrap(sentence, '  ')));
}

/** Room between the inside and what it goes round: the body, and what is worn beneath. */
function roomText(mm: number, unit: MakersUnit): string {
  const length = `${decimalText(Math.abs(mm), unit)} ${unit}`;
  return mm < 0 ? `Inside it is ${length} smaller than what it goes round.` : `Room left inside: ${length}.`;
}

function easeText({ ease, basis }: TargetSheet['design'], unit: MakersUnit): string {
  const { category, place, chosen, tableTerms, lies, room, chanceOfBand } = ease;
  const length = (mm: number): string => `${decimalText(mm, unit)} ${unit}`;
  const where = place === null ? '' : `, ${percent(place)} into its band`;
  const band = category === null ? '' : ` (${inWords(category)}${where})`;
  return [
    chosen === null
      ? ''
      : `Ease ${basis === 'garment' ? 'of the garment that fits' : 'chosen at the chest'}: ${length(chosen)}${band}.`,
    tableTerms === null
      ? ''
      : `As advised it wears like ${length(tableTerms)}${lies === null ? '' : `: ${inWords(lies)}`}.`,
    room === null ? '' : roomText(room, unit),
    chanceOfBand === null ? '' : `Chance that it comes out in the chosen band: ${percent(chanceOfBand)}.`,
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}
