import { memo } from 'react';
import type { BodyDimension, Figure } from '#body';
import { figureShape, landmarks } from '../drawing/figure.ts';
import { Drawing } from '../drawing/Drawing.tsx';
import { tapeRun } from '../drawing/tapes.ts';
import { say } from '../messages.ts';

const FIGURE = 'model-figure';

/** The model figure, written into the page once; every tape drawing uses it. */
export const ModelFigure = memo(function ModelFigure({ figure }: { readonly figure: Figure }) {
  const shape = figureShape(landmarks(figure, {}));
  const parts = [shape.torso, ...shape.arms, shape.head];
  return (
    <svg className="nowhere" aria-hidden="true">
      <defs>
        <g id={FIGURE}>
          {parts.map((path) => (
            <path key={path} d={path} className="figure-edge" />
          ))}
          {parts.map((path) => (
            <path key={path} d={path} className="figure-fill" />
          ))}
        </g>
      </defs>
    </svg>
  );
});

/** Where the tape runs for one measure. */
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
      className="tape-drawing"
      title={say.body.drawing(say.dimension[dimension])}
      description={how}
      viewBox={[x - side / 2, y - side / 2, side, side].map(Math.round).join(' ')}
    >
      <use href={`#${FIGURE}`} />
      {run.view === 'back' && <path className="spine" d={`M0 ${Math.round(at.nape)}V${Math.round(at.hip[1])}`} />}
      {run.behind.map((path) => (
        <path key={path} d={path} className="tape-behind" />
      ))}
      {run.seen.map((path) => (
        <g key={path}>
          <path d={path} className="tape-edge" />
          <path d={path} className="tape" />
        </g>
      ))}
    </Drawing>
  );
});
