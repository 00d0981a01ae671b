import { memo } from 'react';
import type { Neckline, Silhouette } from '#fit';
import type { Construction } from '#garment';
import { flatCorners, flatShape } from '../drawing/flat-garment.ts';
import shapes from '../drawing/shapes.module.css';
import styles from './Sketch.module.css';

/** A thumbnail of a choice. It repeats its label, so it is not read out. */
export const Sketch = memo(function Sketch({
  silhouette = 'pullover',
  construction = 'drop-shoulder',
  neckline = 'crew',
}: {
  readonly silhouette?: Silhouette;
  readonly construction?: Construction;
  readonly neckline?: Neckline;
}) {
  const wide = neckline === 'boat' || neckline === 'scoop';
  const at = flatCorners(construction, {
    'chest-width': 500,
    'neck-width': wide ? 270 : 190,
    'front-neck-depth': { crew: 85, v: 230, boat: 30, scoop: 170 }[neckline],
    'cross-back-width': 390,
    'sleeve-length': 430,
    'shoulder-to-hem': 560,
  });
  const shape = flatShape(construction, at, neckline, silhouette !== 'vest');
  return (
    <svg className={styles.sketch} viewBox="-650 -40 1300 680" aria-hidden="true">
      {[...shape.sleeves, shape.body].map((path) => (
        <path key={path} d={path} className={shapes.garmentFill} />
      ))}
      {silhouette === 'cardigan' && <path d={`M0 ${at.frontNeck[1]}V${at.hem[1]}`} className={shapes.garmentLine} />}
    </svg>
  );
});
