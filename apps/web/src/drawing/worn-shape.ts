import type { Construction } from '#garment';
import type { Neckline } from '#fit';
import { girths } from '#fabric';
import { DRAWN_CONSTRUCTIONS } from './drawn-construction.ts';
import { onArm, type Landmarks } from './figure.ts';
import { along, straight, type Point } from './geometry.ts';

/** What a drawing needs of a sweater to put it on a figure; flat measures, mm. What is null is not drawn, or drawn as on the body. */
export interface WornMeasures {
  readonly chestWidth: number;
  readonly hemWidth: number;
  readonly shoulderToHem: number;
  readonly armholeDepth: number | null;
  /** Between the armhole edges. */
  readonly across: number;
  readonly neckWidth: number | null;
  readonly frontNeckDepth: number | null;
  /** Null for a vest. */
  readonly neckToCuff: number | null;
  readonly sleeveTopWidth: number | null;
  readonly cuffWidth: number | null;
  readonly thicknessMm: number;
  readonly construction: Construction;
  readonly neckline: Neckline;
  readonly opensInFront: boolean;
}

/** Girths of the body inside, mm; where one is absent, the figure's own is taken. */
export interface Inside {
  readonly chest: number;
  readonly hip: number;
  readonly upperArm: number;
  readonly wrist: number;
}

interface WornShape {
  readonly body: string;
  readonly sleeves: readonly string[];
  readonly opening: string | null;
}

/** How far the sweater's outside stands off the body: a tape round it is longer by 2π times the gap (a parallel curve). */
function gap(flatWidth: number, thicknessMm: number, girth: number): number {
  const { outerMm } = girths({ flatMm: flatWidth * 2, thicknessMm });
  return Math.max(2, (outerMm - girth) / (2 * Math.PI));
}

/** The sweater on the figure, from the front; the same scale and place as the figure's own outline. */
export function wornShape(at: Landmarks, inside: Inside, it: WornMeasures): WornShape {
  const slope = (at.shoulder[1] - at.nape) / Math.max(1, at.shoulder[0] - at.neckHalf);
  const onShoulder = (x: number): Point => [x, at.nape + Math.max(0, x - at.neckHalf) * slope - it.thicknessMm];
  const neckHalf = (it.neckWidth ?? at.neckHalf * 2.3) / 2;
  const neck = onShoulder(neckHalf);
  const hemY = at.nape + it.shoulderToHem;
  const underarmY = Math.min(at.nape + (it.armholeDepth ?? at.armpit[1] - at.nape + 20), hemY - 20);
  const chest = at.chestHalf + gap(it.chestWidth, it.thicknessMm, inside.chest);
  const underarm: Point = [Math.min(chest, onArm(at, at.armLength * 0.5)[0]), underarmY];
  const { endsAtNeck } = DRAWN_CONSTRUCTIONS[it.construction];
  const seam = endsAtNeck ? neck : shoulderPoint(at, it.across / 2, onShoulder);
  const right: Point[] = [
    ...neckLine(neck, it.neckline, neck[1] + (it.frontNeckDepth ?? at.nape * 0.2)),
    ...(endsAtNeck ? [] : [onShoulder(Math.min(it.across / 2, at.shoulder[0] * 0.9)), seam]),
    underarm,
    ...sideLine(at, inside, it, hemY),
  ];
  const left = right.map(([x, y]): Point => [-x, y]).reverse();
  const sleeve = it.neckToCuff === null ? null : sleeveLine(at, inside, it, seam, underarm, it.neckToCuff);
  return {
    body: straight([...right, ...left], true),
    sleeves: sleeve === null ? [] : [straight(sleeve, true), straight(sleeve.map(([x, y]): Point => [-x, y]), true)],
    opening: it.opensInFront ? straight([[0, neck[1] + (it.frontNeckDepth ?? 0)], [0, hemY]]) : null,
  }; // prettier-ignore
}

/** Half the front neck, from its lowest point to the shoulder. */
function neckLine(neck: Point, neckline: Neckline, bottom: number): Point[] {
  if (neckline === 'v') return [[0, bottom], neck];
  return Array.from({ length: 8 }, (_, i): Point => {
    const turn = (i / 7) * (Math.PI / 2);
    return [neck[0] * Math.sin(turn), neck[1] + (bottom - neck[1]) * Math.cos(turn)];
  });
}

/** Where the shoulder seam ends: on the shoulder, or, for a wide sweater, down the arm. */
function shoulderPoint(at: Landmarks, half: number, onShoulder: (x: number) => Point): Point {
  const tip = at.shoulder[0] * 0.92;
  return half <= tip ? onShoulder(half) : onArm(at, (half - tip) * 1.05, at.upperArmHalf * 1.08);
}

/** From below the underarm to the hem: hangs straight, but never inside the body. */
function sideLine(at: Landmarks, inside: Inside, it: WornMeasures, hemY: number): Point[] {
  const hem = gap(it.hemWidth, it.thicknessMm, inside.hip) + at.hip[0];
  const hip: Point = [hem, at.hip[1]];
  if (hemY >= at.hip[1]) return [hip, [hem, hemY]];
  const share = Math.max(0, (hemY - at.waist[1]) / (at.hip[1] - at.waist[1]));
  const body = hemY < at.waist[1] ? at.waist[0] : along(at.waist, at.hip, share)[0];
  const girth = (body / at.hip[0]) * inside.hip;
  return [[body + gap(it.hemWidth, it.thicknessMm, girth), hemY]];
}

function sleeveLine(
  at: Landmarks,
  inside: Inside,
  it: WornMeasures,
  seam: Point,
  underarm: Point,
  neckToCuff: number,
): Point[] {
  const down = neckToCuff - at.shoulder[0];
  const top = at.upperArmHalf + gap(it.sleeveTopWidth ?? inside.upperArm / 2, it.thicknessMm, inside.upperArm);
  const cuff = at.wristHalf + gap(it.cuffWidth ?? inside.wrist / 2 + 10, it.thicknessMm, inside.wrist);
  const start = Math.min(down * 0.3, at.armLength * 0.25);
  return [
    seam,
    ...(it.across / 2 > at.shoulder[0] ? [] : [onArm(at, at.armLength * 0.06, top * 0.8), onArm(at, start, Math.min(top, at.upperArmHalf * 1.4))]),
    onArm(at, down, cuff),
    onArm(at, down, -cuff),
    underarm,
  ]; // prettier-ignore
}
