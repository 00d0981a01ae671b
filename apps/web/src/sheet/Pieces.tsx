import { memo, useRef } from 'react';
import { inUnit, schematic, type DrawnPiece, type Piece, type TargetSheet } from '#target-sheet';
import { useWidth } from '../drawing/use-width.ts';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { useWhileSeen } from '../ui/use-while-seen.ts';
import { TO_MAKE } from './to-make.ts';
import { PieceDrawing } from './PieceDrawing.tsx';
import textStyles from '../ui/text.module.css';
import styles from './Pieces.module.css';

/** The scale of the pieces on the screen: their labels must be readable at arm's length. */
const LARGER = 1.4;

/** Every piece to the same scale, with its dimensions. */
export const Pieces = memo(function Pieces({ sheet, tape }: { readonly sheet: TargetSheet; readonly tape: Tape }) {
  const words = say.sheet.pieces;
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place, Math.min(700, window.innerWidth - 64));
  return (
    <section aria-labelledby="pieces-title">
      <h3 id="pieces-title">{words.title}</h3>
      <p className={textStyles.lead}>
        {words.text} {words.unit(say.tape[tape])}
      </p>
      {sheet.notes
        .filter(({ code }) => TO_MAKE.includes(code))
        .map(({ code, text }) => (
          <p key={code}>{text}</p>
        ))}
      <div ref={place} className={styles.pieces}>
        <Drawn sheet={useWhileSeen(place, sheet)} tape={tape} width={width / LARGER} />
      </div>
    </section>
  );
});

const Drawn = memo(function Drawn({
  sheet,
  tape,
  width,
}: {
  readonly sheet: TargetSheet;
  readonly tape: Tape;
  readonly width: number;
}) {
  const byPiece = new Map<string, Piece>(sheet.pieces.map((piece) => [piece.piece, piece]));
  return schematic(inUnit(sheet, tape), { width }).pieces.map((drawn: DrawnPiece) => {
    const made = byPiece.get(drawn.piece);
    return made && <PieceDrawing key={drawn.piece} drawn={drawn} piece={made} larger={LARGER} tape={tape} />;
  });
});
