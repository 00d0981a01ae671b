import { memo } from 'react';
import { GARMENT_DIMENSIONS, type Construction, type GarmentDimension } from '#garment';
import { Drawing } from '../drawing/Drawing.tsx';
import { flatCorners, flatShape, type FlatCorners } from '../drawing/flat-garment.ts';
import type { FlatMeasures } from '../compute/flat-measures.ts';
import { along, straight, type Point } from '../drawing/geometry.ts';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';
import shapes from '../drawing/shapes.module.css';
import styles from './FlatDrawing.module.css';

/** A letter for each measurement, in the order of the fields. */
export const LETTERS: Readonly<Record<GarmentDimension, string>> = Object.fromEntries(
  GARMENT_DIMENSIONS.map((name, i) => [name, String.fromCharCode(65 + i)]),
) as Record<GarmentDimension, string>;

interface MeasureLine {
  readonly from: Point;
  readonly to: Point;
  /** The position of its letter, as a share of the line, and an offset from it. */
  readonly at?: number;
  readonly aside?: Point;
}

function measureLines(at: FlatCorners): Readonly<Record<GarmentDimension, MeasureLine>> {
  const below = 30;
  const [slopeX, slopeY] = [at.cuffOuter[0] - at.shoulder[0], at.cuffOuter[1] - at.shoulder[1]];
  const slope = Math.hypot(slopeX, slopeY) || 1;
  const out: Point = [(slopeY / slope) * 45, (-slopeX / slope) * 45];
  const off = ([x, y]: Point): Point => [x + out[0], y + out[1]];
  const top =
    (at.underarm[0] - at.shoulder[0]) * (slopeX / slope) + (at.underarm[1] - at.shoulder[1]) * (slopeY / slope);
  const upper: Point = [at.shoulder[0] + (slopeX / slope) * top, at.shoulder[1] + (slopeY / slope) * top];
  const crossY = (at.shoulder[1] + at.underarm[1]) * 0.6;
  return {
    'chest-width': { from: [-at.underarm[0], at.underarm[1] + below], to: [at.underarm[0], at.underarm[1] + below], at: 0.3 },
    'hem-width': { from: [-at.hem[0], at.hem[1] - below], to: [at.hem[0], at.hem[1] - below], at: 0.65 },
    'shoulder-to-hem': { from: [-at.neck[0], 0], to: [-at.neck[0], at.hem[1]], at: 0.62 },
    'back-neck-depth': { from: [at.neck[0] * 0.3, 0], to: [at.neck[0] * 0.3, at.backNeck[1]], aside: [0, -70] },
    'front-neck-depth': { from: [-at.neck[0] * 0.15, 0], to: [-at.neck[0] * 0.15, at.frontNeck[1]], at: 1, aside: [0, 62] },
    'neck-width': { from: [-at.neck[0], -22], to: [at.neck[0], -22], aside: [-at.neck[0] * 0.8, -55] },
    'cross-back-width': { from: [-at.shoulder[0], crossY], to: [at.shoulder[0], crossY], at: 0.72 },
    'armhole-depth': { from: [-at.underarm[0] - 26, at.shoulder[1]], to: [-at.underarm[0] - 26, at.underarm[1]], at: 0.18, aside: [-62, -40] },
    'sleeve-top-width': { from: at.underarm, to: upper, at: 0.5 },
    'sleeve-length': { from: off(at.shoulder), to: off(at.cuffOuter), at: 0.55, aside: [out[0] * 0.9, out[1] * 0.9] },
    'cuff-width': { from: at.cuffInner, to: at.cuffOuter, at: 0.5, aside: [55, 60] },
  }; // prettier-ignore
}

/** The sweater laid flat, in the proportions entered so far. Each measurement is a lettered line; the active one is drawn as a tape. */
export const FlatDrawing = memo(function FlatDrawing({
  construction,
  measures,
  sleeveFrom,
  active,
  tape,
}: {
  readonly construction: Construction;
  readonly measures: FlatMeasures;
  readonly sleeveFrom: 'seam' | 'centre-back';
  readonly active: GarmentDimension | null;
  readonly tape: Tape;
}) {
  const at = flatCorners(construction, measures, sleeveFrom);
  const shape = flatShape(construction, at);
  const lines = measureLines(at);
  const half = at.cuffOuter[0] + 110;
  const [top, bottom] = [-150, Math.max(at.hem[1], at.cuffInner[1]) + 60];
  const letters = GARMENT_DIMENSIONS.map((name) => `${LETTERS[name]} ${say.garment.dimension[name]}`);
  return (
    <Drawing
      className={styles.drawing}
      title={say.garment.drawing}
      description={say.garment.drawingText(letters.join('; '))}
      viewBox={[-half, top, half * 2, bottom - top].map(Math.round).join(' ')}
      columns={[say.garment.line, say.body.column.measure, say.body.column.value]}
      rows={() =>
        GARMENT_DIMENSIONS.map((name) => {
          const value = measures[name];
          return [
            LETTERS[name],
            say.garment.dimension[name],
            value === undefined ? say.garment.notWritten : showLength(value, tape),
          ];
        })
      }
    >
      {[...shape.sleeves, shape.body].map((path) => (
        <path key={path} d={path} className={shapes.garmentFill} />
      ))}
      <path d={shape.backNeck} className={shapes.garmentLine} />
      {GARMENT_DIMENSIONS.map((name) => {
        const { from, to, at: share = 0.5, aside = [0, 0] } = lines[name];
        const [x, y] = along(from, to, share);
        const known = measures[name] !== undefined;
        return (
          <g
            key={name}
            className={`${styles.measure} ${name === active ? styles.active : known ? '' : styles.unknown}`}
          >
            <path d={straight([from, to])} className={styles.line} />
            <path d={straight([from, to])} className={styles.tape} />
            <circle cx={x + aside[0]} cy={y + aside[1]} r={40} />
            <text x={x + aside[0]} y={y + aside[1]} dy={20}>
              {LETTERS[name]}
            </text>
          </g>
        );
      })}
    </Drawing>
  );
});
