import { memo } from 'react';
import { girths } from '#fabric';
import { Drawing } from '../drawing/Drawing.tsx';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength, showSmall } from '../reading/numbers.ts';
import shapes from '../drawing/shapes.module.css';
import styles from './RoomDrawing.module.css';

const ORDINARY_MM = 3;

interface Half {
  readonly thickness: number;
  readonly inner: number;
  readonly outerRadius: number;
  readonly innerRadius: number;
}

function half(flatMm: number, thicknessMm: number): Half {
  const { innerMm, outerMm } = girths({ flatMm, thicknessMm });
  return {
    thickness: thicknessMm,
    inner: innerMm,
    innerRadius: Math.max(0, innerMm) / (2 * Math.PI),
    outerRadius: Math.max(0, outerMm) / (2 * Math.PI),
  };
}

/** Half a ring between two radii, left (−1) or right (1) of the middle. */
function halfRing(inner: number, outer: number, side: 1 | -1): string {
  const sweep = side === 1 ? 1 : 0;
  const r = (n: number): string => n.toFixed(1);
  return `M0 ${r(-outer)}A${r(outer)} ${r(outer)} 0 0 ${sweep} 0 ${r(outer)}L0 ${r(inner)}A${r(inner)} ${r(inner)} 0 0 ${1 - sweep} 0 ${r(-inner)}Z`;
}

/** Two sweaters of the same flat width, seen from above: an ordinary fabric on the left, this one on the right. To scale, as circles. */
export const RoomDrawing = memo(function RoomDrawing({
  flatMm,
  bodyMm,
  thicknessMm,
  tape,
}: {
  readonly flatMm: number;
  /** The girth of the body inside; null draws the rings alone. */
  readonly bodyMm: number | null;
  readonly thicknessMm: number;
  readonly tape: Tape;
}) {
  const words = say.yarn.room;
  const ordinary = half(flatMm, ORDINARY_MM);
  const yours = half(flatMm, thicknessMm);
  const bodyRadius = (bodyMm ?? 0) / (2 * Math.PI);
  const reach = (flatMm / (2 * Math.PI)) * 1.22;
  const left = ({ inner }: Half): string => {
    const room = inner - (bodyMm ?? 0);
    return room < 0 ? words.noRoom(showLength(-room, tape)) : showLength(room, tape);
  };
  const said = (it: Half): string => (bodyMm === null ? showLength(it.inner, tape) : left(it));
  const text = bodyMm === null ? words.textAlone : words.text;
  const row = (name: string, it: Half): [string, ...string[]] => [
    name,
    showSmall(it.thickness, tape),
    showLength(it.inner, tape),
    ...(bodyMm === null ? [] : [left(it)]),
  ];
  return (
    <Drawing
      className={styles.drawing}
      title={words.title}
      description={text(showLength(flatMm / 2, tape), said(ordinary), said(yours))}
      viewBox={[-reach, -reach, reach * 2, reach * 2.32].map(Math.round).join(' ')}
      columns={[words.row, words.thickness, words.inside, ...(bodyMm === null ? [] : [words.left])]}
      rows={() => [row(words.ordinary, ordinary), row(words.yours, yours)]}
    >
      {bodyMm !== null && <circle r={bodyRadius} className={shapes.figureFill} />}
      <path d={halfRing(ordinary.innerRadius, ordinary.outerRadius, -1)} className={styles.ordinary} />
      <path d={halfRing(yours.innerRadius, yours.outerRadius, 1)} className={styles.yours} />
      <path d={`M0 ${-reach * 0.94}V${reach * 0.94}`} className={shapes.midLine} />
      {([-1, 1] as const).map((side) => {
        const it = side === 1 ? yours : ordinary;
        const x = side * (bodyRadius * 0.08 + reach * 0.4);
        return (
          <g key={side} className={styles.words}>
            <text x={x} y={-reach * 0.03}>
              {said(it)}
            </text>
            <text x={x} y={reach * 1.1}>
              {side === 1 ? words.yours : words.ordinary}
            </text>
            <text x={x} y={reach * 1.25}>
              {showSmall(it.thickness, tape)}
            </text>
          </g>
        );
      })}
      {bodyMm !== null && <circle r={bodyRadius} className={shapes.figureEdge} />}
    </Drawing>
  );
});
