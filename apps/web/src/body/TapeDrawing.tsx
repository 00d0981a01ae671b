import { memo } from 'react';
import type { BodyDimension, Figure } from '#body';
import { figureShape, landmarks } from '../drawing/figure.ts';
import { Drawing } from '../drawing/Drawing.tsx';
import { tapeRun } from '../drawing/tapes.ts';
import { say } from '../messages.ts';
import shapes from '../drawing/shapes.module.css';
import styles from './TapeDrawing.module.css';

const FIGURE = 'model-figure';

/** The model figure, once in the page; every tape drawing refers to it. */
export const ModelFigure = memo(function ModelFigure({ figure }: { readonly figure: Figure }) {
  const shape = figureShape(landmarks(figure, {}));
  const parts = [shape.torso, ...shape.arms, shape.head];
  return (
    <svg className={styles.hidden} aria-hidden="true">
      <defs>
        <g id={FIGURE}>
          {parts.map((path) => (
            <path key={path} d={path} className={shapes.figureEdge} />
          ))}
          {parts.map((path) => (
            <path key={path} d={path} className={shapes.figureFill} />
          ))}
        </g>
      </defs>
    </svg>
  );
});

/** The drawing of where the tape runs for one measurement. */
export const TapeDrawing = memo(function TapeDrawing({
  dimension,
  figure,
  how,
}: {
  readonly dimension: BodyDimension;
  readonly figure: Figure;
  readonly how: string;
}) {
  const at = landmarks(figure, {});
  const run = tapeRun(dimension, at);
  const [x, y, side] = run.frame;
  return (
    <Drawing
      title={say.body.drawing(say.dimension[dimension])}
      description={how}
      viewBox={[x - side / 2, y - side / 2, side, side].map(Math.round).join(' ')}
    >
      <use href={`#${FIGURE}`} />
      {run.view === 'back' && (
        <path className={shapes.midLine} d={`M0 ${Math.round(at.nape)}V${Math.round(at.hip[1])}`} />
      )}
      {run.behind.map((path) => (
        <path key={path} d={path} className={styles.behind} />
      ))}
      {run.seen.map((path) => (
        <g key={path}>
          <path d={path} className={styles.tapeEdge} />
          <path d={path} className={styles.tape} />
        </g>
      ))}
    </Drawing>
  );
});
