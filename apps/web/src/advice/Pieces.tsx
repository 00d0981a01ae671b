import { memo, useMemo, useRef } from 'react';
import type { Piece } from '#fit';
import { inUnit, schematic, type DrawnPiece, type TargetSheet } from '#target-sheet';
import { useWidth } from '../drawing/use-width.ts';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { PieceDrawing } from './PieceDrawing.tsx';

/** How much larger the pieces are shown than they were laid out: their words are to be read at arm's length. */
const LARGER = 1.4;

/** Every piece to one scale, its measures written on it. */
export const Pieces = memo(function Pieces({ sheet, tape }: { readonly sheet: TargetSheet; readonly tape: Tape }) {
  const words = say.sheet.pieces;
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place, Math.min(700, window.innerWidth - 64));
  const drawn = useMemo(() => schematic(inUnit(sheet, tape), { width: width / LARGER }).pieces, [sheet, tape, width]);
  const byPiece = new Map<string, Piece>(sheet.pieces.map((piece) => [piece.piece, piece]));
  return (
    <section aria-labelledby="pieces-title">
      <h3 id="pieces-title">{words.title}</h3>
      <p className="lead">
        {words.text} {words.unit(say.tape[tape])}
      </p>
      <div ref={place} className="pieces">
        {drawn.map((piece: DrawnPiece) => {
          const made = byPiece.get(piece.piece);
          return made && <PieceDrawing key={piece.piece} drawn={piece} piece={made} larger={LARGER} tape={tape} />;
        })}
      </div>
    </section>
  );
});
