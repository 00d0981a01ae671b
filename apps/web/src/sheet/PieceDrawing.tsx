import type { DrawnOpening, DrawnPiece, Measure, Piece } from '#target-sheet';
import { Drawing } from '../drawing/Drawing.tsx';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength, withoutUnit } from '../reading/numbers.ts';
import shapes from '../drawing/shapes.module.css';
import styles from './PieceDrawing.module.css';

/** Margin around a piece for the ends of its dimension lines, drawing units. */
const EDGE = 4;
/** Half of the stroke that ends a dimension line. */
const TICK = 4;

/** One piece with its dimensions; those without a line are listed beneath. */
export function PieceDrawing({
  drawn,
  piece,
  larger,
  tape,
}: {
  readonly drawn: DrawnPiece;
  readonly piece: Piece;
  readonly larger: number;
  readonly tape: Tape;
}) {
  const words = say.sheet.pieces;
  const { left, right, top, bottom } = drawn.frame;
  const [width, height] = [right - left + 2 * EDGE, bottom - top + 2 * EDGE];
  const show = (value: number | null): string => (value === null ? say.none : showLength(value, tape));
  const said = piece.dimensions
    .filter(({ name }) => drawn.unplaced.includes(name))
    .map(({ name, value }) => `${say.measure[name]} ${show(value)}`);
  const rounded = (measure: Measure): string => {
    const value = piece.dimensions.find(({ name }) => name === measure.name)?.value ?? null;
    return value === null ? measure.label : measure.label.replace(/\S+$/, withoutUnit(showLength(value, tape)));
  };
  const title = `${words.piece[piece.piece]}, ${words.make(piece.make)}`;
  return (
    <div className={styles.piece}>
      <Drawing
        title={title}
        description={words.text}
        viewBox={[left - EDGE, top - EDGE, width, height].map((n) => n.toFixed(1)).join(' ')}
        width={Math.round(width * larger)}
        height={Math.round(height * larger)}
        caption={
          <>
            <strong>{title}</strong> {said.join(', ')}
          </>
        }
        columns={[say.body.column.measure, say.body.column.value]}
        rows={() => piece.dimensions.map(({ name, value }) => [say.measure[name], show(value)])}
      >
        {drawn.outline.length > 0 && (
          <polygon className={shapes.garmentFill} points={drawn.outline.map(point).join(' ')} />
        )}
        <path className={styles.rib} d={drawn.rib.map(([from, to]) => `M${point(from)}L${point(to)}`).join('')} />
        {drawn.measures.map((measure) => (
          <MeasureLine key={measure.name} measure={measure} label={rounded(measure)} />
        ))}
        {drawn.openings.map((opening) => (
          <Opening key={point(opening.from)} opening={opening} tape={tape} />
        ))}
      </Drawing>
    </div>
  );
}

/** Where the neck opens: a row of dots, as of buttons. */
function Opening({
  opening: { from, to, label, labelAt, lengthMm },
  tape,
}: {
  readonly opening: DrawnOpening;
  readonly tape: Tape;
}) {
  return (
    <>
      <path className={styles.opening} d={`M${point(from)}L${point(to)}`} />
      {label !== null && (
        <text x={labelAt[0].toFixed(1)} y={labelAt[1].toFixed(1)} dy="0.35em" className={styles.start}>
          {label.replace(/\S+$/, withoutUnit(showLength(lengthMm, tape)))}
        </text>
      )}
    </>
  );
}

const point = ([x, y]: Measure['from']): string => `${x.toFixed(1)},${y.toFixed(1)}`;

function MeasureLine({
  measure: { from, to, labelAt, upright, anchor },
  label,
}: {
  readonly measure: Measure;
  /** The number is rounded as everywhere on the page. */
  readonly label: string;
}) {
  const standing = from[0] === to[0];
  const tick = ([x, y]: Measure['from']): string =>
    standing ? `M${point([x - TICK, y])}L${point([x + TICK, y])}` : `M${point([x, y - TICK])}L${point([x, y + TICK])}`;
  return (
    <>
      <path className={styles.dimension} d={`M${point(from)}L${point(to)}${tick(from)}${tick(to)}`} />
      <text
        x={labelAt[0].toFixed(1)}
        y={labelAt[1].toFixed(1)}
        dy="0.35em"
        className={anchor === 'start' ? styles.start : undefined}
        {...(upright ? { transform: `rotate(-90 ${point(labelAt)})` } : {})}
      >
        {label}
      </text>
    </>
  );
}
