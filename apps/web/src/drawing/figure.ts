import type { BodyDimension, Figure } from '#body';
import { mirrored, smooth, stepFrom, type Point } from './geometry.ts';

/** Body measures for a drawing, mm. What is absent is taken from a model figure of the same stature. */
export type Measures = Readonly<Partial<Record<BodyDimension, number>>>;

/** A model figure for drawings alone; no advice is made of it (from memory, after the published tables). */
const MODEL: Readonly<Record<Figure, Record<string, number>>> = {
  woman: { stature: 1640, chest: 940, waist: 780, hip: 1000, back: 404, waistLength: 430, scye: 184, arm: 565, upperArm: 290, wrist: 160, head: 561, neck: 371, headShare: 0.133 },
  man: { stature: 1760, chest: 1000, waist: 880, hip: 990, back: 440, waistLength: 460, scye: 215, arm: 610, upperArm: 320, wrist: 175, head: 575, neck: 420, headShare: 0.13 },
  child: { stature: 1160, chest: 635, waist: 570, hip: 640, back: 265, waistLength: 270, scye: 130, arm: 390, upperArm: 203, wrist: 125, head: 511, neck: 290, headShare: 0.165 },
  baby: { stature: 740, chest: 455, waist: 450, hip: 470, back: 205, waistLength: 185, scye: 95, arm: 215, upperArm: 150, wrist: 110, head: 460, neck: 240, headShare: 0.225 },
  unsaid: { stature: 1700, chest: 970, waist: 820, hip: 995, back: 420, waistLength: 445, scye: 198, arm: 585, upperArm: 300, wrist: 168, head: 567, neck: 392, headShare: 0.132 },
}; // prettier-ignore

/** Breadth seen from the front, as a share of the girth (assumed: an oval body). */
const BREADTH = { chest: 0.305, waist: 0.315, hip: 0.345, head: 0.27, neck: 0.29 };
/** How far the arms hang out from straight down, radians. */
const ARM_ANGLE = 0.24;

/** The landmarks of a figure seen from the front; x is negative on the left of the drawing. */
export interface Landmarks {
  readonly top: number;
  readonly nape: number;
  readonly neckHalf: number;
  readonly shoulder: Point;
  readonly armpit: Point;
  readonly chestHalf: number;
  readonly waist: Point;
  readonly hip: Point;
  readonly crotch: number;
  readonly floor: number;
  readonly headHalf: number;
  readonly chin: number;
  readonly brow: number;
  readonly armAngle: number;
  readonly armLength: number;
  readonly upperArmHalf: number;
  readonly wristHalf: number;
  readonly hand: number;
}

export function landmarks(figure: Figure, measures: Measures): Landmarks {
  const model = MODEL[figure];
  const stature = measures.stature ?? model.stature ?? 0;
  const size = stature / (model.stature ?? 1);
  const or = (name: BodyDimension, key: string, scaled = 1): number => measures[name] ?? (model[key] ?? 0) * scaled;

  const headHeight = stature * (model.headShare ?? 0.13);
  const nape = headHeight * 1.1;
  const backHalf = or('across-back', 'back', size) / 2;
  const armpit = nape + or('scye-depth', 'scye', size);
  const chestHalf = or('chest-girth', 'chest', size) * BREADTH.chest * 0.5;
  const waist = nape + or('back-waist-length', 'waistLength', size);
  const hip = waist + (measures['waist-to-hip'] ?? 0.125 * stature);
  const neckHalf = or('neck-base-girth', 'neck', size) * BREADTH.neck * 0.5;
  const shoulder: Point = [backHalf, nape + (backHalf - neckHalf) * 0.36];
  return {
    top: 0,
    nape,
    neckHalf,
    shoulder,
    armpit: [Math.min(chestHalf, backHalf * 0.98), armpit],
    chestHalf,
    waist: [or('waist-girth', 'waist', size) * BREADTH.waist * 0.5, waist],
    hip: [or('hip-girth', 'hip', size) * BREADTH.hip * 0.5, hip],
    crotch: Math.max(hip + 0.035 * stature, 0.535 * stature),
    floor: stature,
    headHalf: or('head-girth', 'head', size) * BREADTH.head * 0.5,
    chin: headHeight,
    brow: headHeight * 0.36,
    armAngle: ARM_ANGLE,
    armLength: or('arm-length', 'arm', size),
    upperArmHalf: or('upper-arm-girth', 'upperArm', size) / (2 * Math.PI),
    wristHalf: or('wrist-girth', 'wrist', size) / (2 * Math.PI),
    hand: 0.105 * stature,
  };
}

/** The middle of the arm, `down` mm below the shoulder point along it, on the right side of the drawing. */
export function onArm(at: Landmarks, down: number, aside = 0): Point {
  const start: Point = [at.shoulder[0] - at.upperArmHalf * 0.82, at.shoulder[1] + at.upperArmHalf * 0.55];
  return stepFrom(start, at.armAngle, down - at.upperArmHalf * 0.55, aside);
}

interface FigureShape {
  readonly torso: string;
  readonly arms: readonly string[];
  readonly head: string;
}

/** The outline of a figure from the front, with the arms a little away from the body. */
export function figureShape(at: Landmarks): FigureShape {
  const legs = at.floor - at.crotch;
  const ankle = 0.02 * at.floor;
  const fall = at.shoulder[1] - at.nape;
  const reach = at.shoulder[0] - at.neckHalf;
  const right: Point[] = [
    [at.neckHalf * 0.8, at.chin * 0.76],
    [at.neckHalf * 0.86, at.nape * 0.96],
    [at.neckHalf * 1.2, at.nape + fall * 0.14],
    [at.neckHalf + reach * 0.55, at.nape + fall * 0.5],
    [at.shoulder[0] * 0.92, at.shoulder[1] - fall * 0.06],
    [at.shoulder[0] * 0.88, at.shoulder[1] + (at.armpit[1] - at.shoulder[1]) * 0.5],
    [at.chestHalf * 0.99, at.armpit[1] + (at.waist[1] - at.armpit[1]) * 0.1],
    [at.chestHalf * 0.97, at.armpit[1] + (at.waist[1] - at.armpit[1]) * 0.35],
    [at.waist[0] * 1.01, at.armpit[1] + (at.waist[1] - at.armpit[1]) * 0.82],
    [at.waist[0] * 1.01, at.waist[1] + (at.hip[1] - at.waist[1]) * 0.08],
    [at.waist[0] * 0.35 + at.hip[0] * 0.65, at.waist[1] + (at.hip[1] - at.waist[1]) * 0.5],
    at.hip,
    [at.hip[0] * 0.97, at.crotch + legs * 0.08],
    [at.hip[0] * 0.74, at.crotch + legs * 0.4],
    [at.hip[0] * 0.68, at.crotch + legs * 0.58],
    [at.hip[0] * 0.45, at.floor - ankle * 2],
    [at.hip[0] * 0.54, at.floor],
    [at.hip[0] * 0.24, at.floor],
    [at.hip[0] * 0.26, at.floor - ankle * 2],
    [at.hip[0] * 0.2, at.crotch + legs * 0.5],
    [at.hip[0] * 0.06, at.crotch + legs * 0.1],
    [0, at.crotch],
  ];
  return {
    torso: smooth([...right, ...mirrored(right).slice(1)], true),
    arms: [armShape(at, 1), armShape(at, -1)],
    head: smooth(headPoints(at), true),
  };
}

function armShape(at: Landmarks, side: 1 | -1): string {
  const { upperArmHalf: top, wristHalf: wrist, armLength: length } = at;
  const thumb = at.hand * 0.16;
  const outer = [
    [at.shoulder[0] * 0.86, at.shoulder[1] - (at.shoulder[1] - at.nape) * 0.1] as const,
    [at.shoulder[0] + top * 0.02, at.shoulder[1] + top * 0.28] as const,
    onArm(at, length * 0.14, top * 1.02),
    onArm(at, length * 0.3, top * 0.94),
    onArm(at, length * 0.52, top * 0.8),
    onArm(at, length * 0.62, top * 0.78),
    onArm(at, length, wrist),
    onArm(at, length + at.hand * 0.35, wrist * 1.3),
    onArm(at, length + at.hand * 0.8, wrist * 1.0),
    onArm(at, length + at.hand, wrist * 0.1),
  ];
  const inner = [
    onArm(at, length + at.hand * 0.82, -wrist * 0.8),
    onArm(at, length + at.hand * 0.56, -wrist * 1.0 - thumb * 0.5),
    onArm(at, length + at.hand * 0.28, -wrist * 1.2),
    onArm(at, length, -wrist),
    onArm(at, length * 0.6, -top * 0.8),
    onArm(at, length * 0.48, -top * 0.82),
    onArm(at, length * 0.25, -top * 0.9),
    onArm(at, length * 0.04, -top * 0.2),
  ];
  return smooth(
    [...outer, ...inner].map(([x, y]): Point => [side * x, y]),
    true,
  );
}

function headPoints(at: Landmarks): Point[] {
  const right: Point[] = [
    [0, at.top],
    [at.headHalf * 0.72, at.chin * 0.09],
    [at.headHalf, at.chin * 0.38],
    [at.headHalf * 0.9, at.chin * 0.64],
    [at.headHalf * 0.5, at.chin * 0.94],
    [0, at.chin],
  ];
  return [...right, ...mirrored(right).slice(1, -1)];
}
