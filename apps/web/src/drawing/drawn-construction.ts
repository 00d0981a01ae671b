import type { Construction } from '#garment';
import type { Point } from './geometry.ts';

/** How a construction is drawn; the shares are of the chest's width, for what was not measured (for the drawing alone). */
interface DrawnConstruction {
  /** Whether its armhole runs to the neck, without a shoulder above it. */
  readonly endsAtNeck: boolean;
  /** Whether the body itself ends at the armhole, as wide as it is. */
  readonly asWideAsBody: boolean;
  /** Between the armhole edges, laid flat and on a body. */
  readonly acrossShare: number;
  readonly wornAcrossShare: number;
  readonly depthShare: number;
  /** How much lower than its neck end the shoulder's tip is, a share of the shoulder. */
  readonly shoulderFall: number;
  /** From the shoulder to the underarm, as the sleeve is joined. */
  readonly armhole: (shoulder: Point, underarm: Point) => Point[];
}

const straightArmhole = (shoulder: Point, underarm: Point): Point[] => [shoulder, underarm];

export const DRAWN_CONSTRUCTIONS: Readonly<Record<Construction, DrawnConstruction>> = {
  'drop-shoulder': {
    endsAtNeck: false,
    asWideAsBody: true,
    acrossShare: 1,
    wornAcrossShare: 1,
    depthShare: 0.48,
    shoulderFall: 0,
    armhole: straightArmhole,
  },
  'squared-drop': {
    endsAtNeck: false,
    asWideAsBody: false,
    acrossShare: 0.8,
    wornAcrossShare: 0.8,
    depthShare: 0.42,
    shoulderFall: 0,
    armhole: (shoulder, underarm) => [shoulder, [shoulder[0], underarm[1]], underarm],
  },
  'set-in': {
    endsAtNeck: false,
    asWideAsBody: false,
    acrossShare: 0.8,
    wornAcrossShare: 0.8,
    depthShare: 0.42,
    shoulderFall: 0.2,
    armhole: (shoulder, underarm) => {
      const [dx, dy] = [underarm[0] - shoulder[0], underarm[1] - shoulder[1]];
      const bend = (share: number, drop: number): Point => [shoulder[0] + dx * share, shoulder[1] + dy * drop];
      return [shoulder, bend(-0.06, 0.3), bend(-0.04, 0.62), bend(0.18, 0.84), bend(0.5, 0.96), underarm];
    },
  },
  raglan: {
    endsAtNeck: true,
    asWideAsBody: false,
    acrossShare: 1,
    wornAcrossShare: 0.8,
    depthShare: 0.42,
    shoulderFall: 0,
    armhole: straightArmhole,
  },
};
