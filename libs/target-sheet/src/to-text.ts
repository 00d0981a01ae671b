import { inUnit } from './in-unit.ts';
import type { Collision, Piece, SheetNote } from './sheet-parts.ts';
import type { TargetSheet } from './target-sheet.ts';
import { checkLines } from './text/check-lines.ts';
import { chosenLines } from './text/chosen-lines.ts';
import { differsUnwashed, dimensionTable, hasSeams } from './text/dimension-table.ts';
import type { MakersUnit } from './text/length-text.ts';
import { heading, widthOf, wrap } from './text/lines.ts';
import { printed } from './text/printed.ts';

/**
 * A sheet as plain text to print or read in a terminal: lines of at most 80 characters, every dimension in centimetres
 * and in inches to the nearest ⅛.
 */
export function toText(given: TargetSheet): string {
  const sheet = inUnit(given, 'mm');
  const unit = given.unit === 'in' ? 'in' : 'cm';
  const title = wrap(sheet.title || printed('untitled', {}));
  return [
    ...title,
    '='.repeat(Math.max(...title.map(widthOf))),
    ...chosenLines(sheet, unit),
    ...heading(printed('garment', {})),
    ...dimensionTable(sheet.assembled, unit),
    ...wrap(legend(sheet, unit), '  '),
    ...sheet.pieces.flatMap((piece) => [...heading(pieceTitle(piece)), ...dimensionTable(piece.dimensions, unit)]),
    ...part(printed('checks', {}), checkLines(sheet.checks, unit)),
    ...part(printed('collisions', {}), sheet.collisions.flatMap(collisionLines)),
    ...part(printed('cautions', {}), sheet.cautions.flatMap(noteLines)),
    ...part(printed('notes', {}), sheet.notes.flatMap(noteLines)),
    '',
    ...wrap(printed('origin', { id: sheet.id, day: sheet.createdAt.slice(0, 10), rules: sheet.rulesVersion })),
    '',
  ].join('\n');
}

function legend({ pieces }: TargetSheet, tape: MakersUnit): string {
  const unwashed = pieces.some(({ dimensions }) => dimensions.some(differsUnwashed));
  const seamed = pieces.some(({ dimensions }) => dimensions.some(hasSeams));
  return printed('legend', { tape, unwashed, seamed });
}

const part = (title: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [...heading(title), ...lines];

const pieceTitle = ({ piece, make, mirrored, workedFrom }: Piece): string =>
  printed('piece', { piece, make, mirrored, workedFrom });

const collisionLines = ({ wishes: [one, other], dimension }: Collision): string[] =>
  wrap(printed('collision', { wishes: [one.text, other.text], dimension }), '  - ');

const noteLines = ({ text, source }: SheetNote): string[] =>
  wrap(source === undefined ? text : `${text} (${source})`, '  - ');
