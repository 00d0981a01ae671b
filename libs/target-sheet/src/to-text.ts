import { inUnit } from './in-unit.ts';
import type { Collision, Piece, SheetNote } from './sheet-parts.ts';
import type { TargetSheet } from './target-sheet.ts';
import { checkLines } from './text/check-lines.ts';
import { chosenLines } from './text/chosen-lines.ts';
import { differsUnwashed, dimensionTable, hasSeams } from './text/dimension-table.ts';
import type { MakersUnit } from './text/length-text.ts';
import { heading, inWords, widthOf, wrap } from './text/lines.ts';
import { wishText } from './wish-text.ts';

const FROM = { hem: 'from the hem up', cuff: 'from the cuff up', edge: 'from its picked-up edge' } as const;

/**
 * A sheet as plain text to print or read in a terminal: lines of at most 80 characters, every dimension in centimetres
 * and in inches to the nearest ⅛.
 */
export function toText(given: TargetSheet): string {
  const sheet = inUnit(given, 'mm');
  const unit = given.unit === 'in' ? 'in' : 'cm';
  const title = wrap(sheet.title || 'Target sheet');
  return [
    ...title,
    '='.repeat(Math.max(...title.map(widthOf))),
    ...chosenLines(sheet, unit),
    ...heading('The finished garment, laid flat'),
    ...dimensionTable(sheet.assembled, unit),
    ...wrap(legend(sheet, unit), '  '),
    ...sheet.pieces.flatMap((piece) => [...heading(pieceTitle(piece)), ...dimensionTable(piece.dimensions, unit)]),
    ...part('Will it go on, will it stay on', checkLines(sheet.checks, unit)),
    ...part('Wishes that collide', sheet.collisions.flatMap(collisionLines)),
    ...part('Take care', sheet.cautions.flatMap(noteLines)),
    ...part('Notes', sheet.notes.flatMap(noteLines)),
    '',
    ...wrap(`Sheet ${sheet.id}, made ${sheet.createdAt.slice(0, 10)}, rules ${sheet.rulesVersion}.`),
    '',
  ].join('\n');
}

function legend({ pieces }: TargetSheet, unit: MakersUnit): string {
  const grows = pieces.some(({ dimensions }) => dimensions.some(differsUnwashed));
  const seamed = pieces.some(({ dimensions }) => dimensions.some(hasSeams));
  const shown = `± is the standard uncertainty, “anywhere in” how far a length may be rounded, both in ${unit === 'cm' ? unit : 'inches'}.`;
  if (!grows) return seamed ? `${shown} “Seamed” is with the seam allowance; the other lengths leave it out.` : shown;
  const unwashed = `${shown} “Unwashed” is what comes off the needles or hook: go by it only with a gauge from an unwashed swatch.`;
  return seamed
    ? `${unwashed} It holds the seam allowance; the other lengths leave it out, so add it at every edge that is sewn.`
    : unwashed;
}

const part = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [...heading(title), ...lines];

function pieceTitle({ piece, make, mirrored, workedFrom }: Piece): string {
  const mirror = mirrored > 0 ? `, ${mirrored} of them mirrored` : '';
  return `${inWords(piece)}: make ${make}${mirror}, ${FROM[workedFrom]}`;
}

const collisionLines = ({ wishes, dimension }: Collision): string[] =>
  wrap(`${wishText(wishes[0])}, and ${wishText(wishes[1])} (${inWords(dimension)}).`, '  - ');

const noteLines = ({ text, source }: SheetNote): string[] =>
  wrap(source === undefined ? text : `${text} (${source})`, '  - ');
