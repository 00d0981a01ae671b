import { memo, useMemo } from 'react';
import type { BodyProfile, Figure } from '#body';
import type { Garment } from '#garment';
import { innerFromFlat } from '#fabric';
import type { TargetSheet } from '#target-sheet';
import { Drawing, type NumberRow } from '../drawing/Drawing.tsx';
import { figureShape, landmarks, type Measures } from '../drawing/figure.ts';
import { wornShape, type Inside, type WornMeasures } from '../drawing/worn-shape.ts';
import { say } from '../messages.ts';
import type { Tape } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';
import { wornFromGarment, wornFromSheet } from '../drawing/worn-measures.ts';
import shapes from '../drawing/shapes.module.css';
import styles from './OnBody.module.css';

/** The outline of the body, the sweater over it, and the sweater that fits as a dashed line. The frame keeps its size. */
export const OnBody = memo(function OnBody({
  figure,
  profile,
  sheet,
  garment,
  tape,
}: {
  readonly figure: Figure;
  readonly profile: BodyProfile | null;
  readonly sheet: TargetSheet | null;
  readonly garment: Garment | null;
  readonly tape: Tape;
}) {
  const words = say.sheet.onBody;
  const measures = useMemo(() => measuresOf(profile), [profile]);
  const at = useMemo(() => landmarks(figure, measures), [figure, measures]);
  const body = useMemo(() => figureShape(at), [at]);
  const inside: Inside = {
    chest: measures['chest-girth'] ?? at.chestHalf * 6.5,
    hip: measures['hip-girth'] ?? at.hip[0] * 5.8,
    upperArm: at.upperArmHalf * 2 * Math.PI,
    wrist: at.wristHalf * 2 * Math.PI,
  };
  const worn = sheet === null ? null : wornFromSheet(sheet);
  const favourite = garment === null ? null : wornFromGarment(garment);
  const shape = worn === null ? null : wornShape(at, inside, worn);
  const dashed = favourite === null ? null : wornShape(at, inside, favourite);
  const parts = [body.torso, ...body.arms, body.head];
  const side = at.floor * 0.5;
  return (
    <Drawing
      className={styles.onBody}
      title={words.title}
      description={favourite === null ? words.text : `${words.text} ${words.favourite}`}
      viewBox={[-side * 0.62, -at.floor * 0.01, side * 1.24, at.floor * 0.72].map(Math.round).join(' ')}
      columns={words.columns}
      rows={() => rowsOf(inside, profile, worn, favourite, tape)}
    >
      {parts.map((path) => (
        <path key={path} d={path} className={`${shapes.figureEdge} ${styles.edge}`} />
      ))}
      {parts.map((path) => (
        <path key={path} d={path} className={shapes.figureFill} />
      ))}
      {shape && (
        <g className={styles.sweater}>
          {[...shape.sleeves, shape.body].map((path) => (
            <path key={path} d={path} />
          ))}
          {shape.opening && <path d={shape.opening} />}
        </g>
      )}
      {dashed && (
        <g className={styles.favourite}>
          {[...dashed.sleeves, dashed.body].map((path) => (
            <path key={path} d={path} />
          ))}
        </g>
      )}
    </Drawing>
  );
});

const measuresOf = (profile: BodyProfile | null): Measures =>
  Object.fromEntries(Object.entries(profile?.values ?? {}).map(([name, { value }]) => [name, value]));

function rowsOf(
  inside: Inside,
  profile: BodyProfile | null,
  worn: WornMeasures | null,
  favourite: WornMeasures | null,
  tape: Tape,
): NumberRow[] {
  const words = say.sheet.onBody;
  const show = (mm: number | null | undefined): string => (mm == null ? say.none : showLength(mm, tape));
  const round = (it: WornMeasures | null, width: (it: WornMeasures) => number | null): number | null => {
    const flat = it && width(it);
    return it === null || flat === null ? null : innerFromFlat(2 * flat, it.thicknessMm);
  };
  const row = (name: string, body: number | null, width: (it: WornMeasures) => number | null): NumberRow => [
    name,
    show(body),
    show(round(worn, width)),
    show(round(favourite, width)),
  ];
  return [
    row(words.chest, inside.chest, (it) => it.chestWidth),
    row(words.hip, inside.hip, (it) => it.hemWidth),
    row(words.arm, inside.upperArm, (it) => it.sleeveTopWidth),
    row(words.wrist, inside.wrist, (it) => it.cuffWidth),
    [words.length, say.none, show(worn?.shoulderToHem), show(favourite?.shoulderToHem)],
    [words.cuff, show(profile?.values['nape-to-cuff']?.value), show(worn?.neckToCuff), show(favourite?.neckToCuff)],
  ];
}
