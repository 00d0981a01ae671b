import type { DimensionName, PieceName } from '#fit';
import { say } from '../messages.ts';
import type { Fact } from './planner-notes.ts';

/** A field of the sheet in words: "Sleeve: Cuff width". */
export function nameOf(ours: string): string {
  const words = say.send.fact as Readonly<Record<string, string>>;
  const fact = words[ours as Fact];
  if (fact !== undefined) return fact;
  const [place = '', dimension = ''] = ours.split('/');
  const where = place === 'assembled' ? say.send.assembled : (say.sheet.pieces.piece[place as PieceName] ?? place);
  return `${where}: ${say.measure[dimension as DimensionName] ?? dimension}`;
}
