import type { TargetSheet } from '../target-sheet.ts';
import { decimalText, type MakersUnit } from './length-text.ts';
import { wrap } from './lines.ts';
import { printed } from './printed.ts';

/** What was chosen, in sentences, of a sheet in mm. */
export function chosenLines({ design, fabric }: TargetSheet, unit: MakersUnit): string[] {
  const { construction, silhouette, length, neckline, basis } = design;
  return [
    printed('chosen', { construction, silhouette, length, neckline, basis }),
    easeText(design, unit),
    printed('fabric', { thicknessMm: fabric.thickness, uMm: fabric.u, from: fabric.from }),
  ].flatMap((sentence) => (sentence === '' ? [] : wrap(sentence, '  ')));
}

function easeText({ ease, basis }: TargetSheet['design'], unit: MakersUnit): string {
  const { category, place, chosen, tableTerms, lies, room, chanceOfBand } = ease;
  const length = (mm: number): string => `${decimalText(mm, unit)} ${unit}`;
  const sentences: string[] = [];
  if (chosen !== null)
    sentences.push(printed('ease', { ofGarment: basis === 'garment', ease: length(chosen), category, place }));
  if (tableTerms !== null) sentences.push(printed('wears-like', { ease: length(tableTerms), lies }));
  if (room !== null && room < 0) sentences.push(printed('smaller-inside', { by: length(-room) }));
  if (room !== null && room >= 0) sentences.push(printed('room-left', { room: length(room) }));
  if (chanceOfBand !== null) sentences.push(printed('chance-of-band', { chance: chanceOfBand }));
  return sentences.join(' ');
}
