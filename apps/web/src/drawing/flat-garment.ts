import type { Construction } from '#garment';
import type { Neckline } from '#fit';
import type { FlatMeasures } from '../compute/flat-measures.ts';
import { DRAWN_CONSTRUCTIONS } from './drawn-construction.ts';
import { smooth, straight, type Point } from './geometry.ts';

/** Where the corners of a sweater laid flat are: x from its middle, y down from the high points of the shoulders; right half. */
export interface FlatCorners {
  readonly neck: Point;
  readonly frontNeck: Point;
  readonly backNeck: Point;
  readonly shoulder: Point;
  readonly underarm: Point;
  readonly hem: Point;
  readonly cuffOuter: Point;
  readonly cuffInner: Point;
  /** Where the sleeve's upper edge begins. */
  readonly sleeveTop: Point;
}

/** How steeply the sleeves hang, radians below level. */
const SLEEVE_ANGLE = 0.9;

/** The corners, from what is known; the rest in the proportions of an ordinary sweater (for the drawing alone). */
export function flatCorners(
  construction: Construction,
  given: FlatMeasures,
  sleeveFrom: 'seam' | 'centre-back' = 'seam',
): FlatCorners {
  const width = given['chest-width'] ?? 500;
  const length = given['shoulder-to-hem'] ?? width * 1.2;
  const neckHalf = (given['neck-width'] ?? width * 0.36) / 2;
  const drawn = DRAWN_CONSTRUCTIONS[construction];
  const measuredAcross = drawn.asWideAsBody ? undefined : given['cross-back-width'];
  const shoulderHalf = (measuredAcross ?? width * drawn.acrossShare) / 2;
  const depth = given['armhole-depth'] ?? width * drawn.depthShare;
  const fall = drawn.shoulderFall * Math.max(0, shoulderHalf - neckHalf);
  const neck: Point = [neckHalf, 0];
  const shoulder: Point = drawn.endsAtNeck ? neck : [shoulderHalf, fall];
  const underarm: Point = [width / 2, fall + depth];
  const across = shoulder[0];
  const sleeve = given['sleeve-length'] ?? width * 0.95;
  const sleeveLength = sleeveFrom === 'centre-back' && given['sleeve-length'] !== undefined ? sleeve - across : sleeve;
  const cuff = given['cuff-width'] ?? width * 0.19;
  const [down, out] = [Math.sin(SLEEVE_ANGLE), Math.cos(SLEEVE_ANGLE)];
  const cuffOuter: Point = [shoulder[0] + sleeveLength * out, shoulder[1] + sleeveLength * down];
  return {
    neck,
    frontNeck: [0, given['front-neck-depth'] ?? width * 0.16],
    backNeck: [0, given['back-neck-depth'] ?? width * 0.045],
    shoulder,
    underarm,
    hem: [(given['hem-width'] ?? width * 0.96) / 2, length],
    cuffOuter,
    cuffInner: [cuffOuter[0] - cuff * down, cuffOuter[1] + cuff * out],
    sleeveTop: shoulder,
  };
}

/** The parts of the drawing as SVG paths: body, both sleeves, the back of the neck. */
interface FlatShape {
  readonly body: string;
  readonly sleeves: readonly string[];
  readonly backNeck: string;
  readonly seams: readonly string[];
}

const flip = (points: readonly Point[]): Point[] => points.map(([x, y]): Point => [-x, y]);

/** Half the front neck edge, from the right high point to the middle. */
function neckEdge(neckline: Neckline, at: Pick<FlatCorners, 'neck' | 'frontNeck'>): Point[] {
  const [half, depth] = [at.neck[0], at.frontNeck[1]];
  if (neckline === 'v') return [at.neck, [0, depth]];
  return Array.from({ length: 9 }, (_, i): Point => {
    const turn = (i / 8) * (Math.PI / 2);
    return [half * Math.cos(turn), depth * Math.sin(turn)];
  });
}

export function flatShape(
  construction: Construction,
  at: FlatCorners,
  neckline: Neckline = 'crew',
  sleeves = true,
): FlatShape {
  const edge = neckEdge(neckline, at);
  const armhole = DRAWN_CONSTRUCTIONS[construction].armhole(at.shoulder, at.underarm);
  const right: Point[] = [...edge].reverse().concat(armhole, [at.hem]);
  const body = straight([...right, ...flip(right).reverse()], true);
  const sleeve: Point[] = [...armhole, at.cuffInner, at.cuffOuter];
  const neckBack = neckEdge('crew', { neck: at.neck, frontNeck: at.backNeck });
  return {
    body,
    sleeves: sleeves ? [straight(sleeve, true), straight(flip(sleeve), true)] : [],
    backNeck: smooth([...neckBack, ...flip(neckBack).reverse().slice(1)]),
    seams: [straight(armhole), straight(flip(armhole))],
  };
}
