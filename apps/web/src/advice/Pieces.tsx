import { useMemo, useRef } from 'react';
import { schematic, type Measure, type PlacedPiece, type TargetSheet } from '#target-sheet';
import { Drawing, type NumberRow } from '../drawing/Drawing.tsx';
import { useWidth } from '../drawing/use-width.ts';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';

/** How much larger the drawing is shown than it was laid out: its words are to be read at arm's length. */
const LARGER = 1.4;

/** Every piece to one scale, its measures written on it. */
export function Pieces({ sheet, tape }: { readonly sheet: TargetSheet; readonly tape: Tape }) {
  const words = say.sheet.pieces;
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place, Math.min(700, window.innerWidth - 64));
  const laidOut = useMemo(() => schematic({ ...sheet, unit: tape }, { width: width / LARGER }), [sheet, tape, width]);
  return (
    <section aria-labelledby="pieces-title">
      <h3 id="pieces-title">{words.title}</h3>
      <div ref={place}>
        <Drawing
          className="pieces"
          title={words.title}
          description={words.text}
          viewBox={`0 0 ${laidOut.width} ${Math.ceil(laidOut.height)}`}
          columns={words.columns}
          rows={sheet.pieces.flatMap(({ piece, dimensions }) =>
            dimensions.map(({ name, value }): NumberRow => [
              words.piece[piece],
              say.measure[name],
              value === null ? say.none : showLength(value, tape),
            ]),
          )}
        >
          <text x={12} y={24} className="legend">
            {words.unit(say.tape[tape])}
          </text>
          {laidOut.pieces.map((piece) => (
            <PieceDrawing key={piece.piece} piece={piece} />
          ))}
        </Drawing>
      </div>
    </section>
  );
}

function PieceDrawing({ piece }: { readonly piece: PlacedPiece }) {
  return (
    <g transform={`translate(${piece.at.join(' ')})`}>
      {piece.outline.length > 0 && (
        <polygon className="garment-fill" points={piece.outline.map((point) => point.join(',')).join(' ')} />
      )}
      <path className="rib" d={piece.rib.map(([from, to]) => `M${from.join(' ')}L${to.join(' ')}`).join('')} />
      {piece.measures.map((measure) => (
        <MeasureLine key={measure.name} measure={measure} />
      ))}
      {piece.words.map(({ text, at }, i) => (
        <text key={i} x={at[0]} y={at[1]} className={i === 0 ? 'name' : 'unplaced'}>
          {text}
        </text>
      ))}
    </g>
  );
}

const TICK = 4;

function MeasureLine({ measure: { from, to, label, labelAt, upright, anchor } }: { readonly measure: Measure }) {
  const standing = from[0] === to[0];
  const tick = ([x, y]: Measure['from']): string =>
    standing ? `M${x - TICK} ${y}H${x + TICK}` : `M${x} ${y - TICK}V${y + TICK}`;
  return (
    <>
      <path className="dimension" d={`M${from.join(' ')}L${to.join(' ')}${tick(from)}${tick(to)}`} />
      <text
        x={labelAt[0]}
        y={labelAt[1]}
        dy="0.35em"
        className={anchor}
        {...(upright ? { transform: `rotate(-90 ${labelAt.join(' ')})` } : {})}
      >
        {label}
      </text>
    </>
  );
}
