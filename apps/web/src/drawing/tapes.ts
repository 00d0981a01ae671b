import type { BodyDimension } from '#body';
import { onArm, type Landmarks } from './figure.ts';
import { smooth, straight, type Point } from './geometry.ts';

/** Where the tape runs on a figure: what is seen, and what passes behind. */
interface TapeRun {
  readonly seen: readonly string[];
  readonly behind: readonly string[];
  /** Part of the figure to show: the middle x, the middle y, and the side of the square, mm. */
  readonly frame: readonly [x: number, y: number, side: number];
  readonly view: 'front' | 'back';
}

const SAG = 0.17;

/** A tape round the body at a level. */
function round(half: number, y: number): Pick<TapeRun, 'seen' | 'behind'> {
  const bow = (by: number): Point[] => [
    [-half, y],
    [-half * 0.6, y + by * 0.72],
    [0, y + by],
    [half * 0.6, y + by * 0.72],
    [half, y],
  ];
  return { seen: [smooth(bow(half * SAG))], behind: [smooth(bow(-half * SAG))] };
}

/** A tape round the arm, `down` mm from the shoulder. */
function roundArm(at: Landmarks, down: number, half: number): Pick<TapeRun, 'seen' | 'behind'> {
  const bow = (by: number): string => smooth([onArm(at, down, -half), onArm(at, down + by, 0), onArm(at, down, half)]);
  return { seen: [bow(half * 0.35)], behind: [bow(-half * 0.35)] };
}

type Run = (at: Landmarks) => Omit<TapeRun, 'view'> & { readonly view?: 'back' };

const trunk = (at: Landmarks): TapeRun['frame'] => [0, (at.nape + at.hip[1]) / 2, (at.hip[1] - at.nape) * 1.45];
const whole = (at: Landmarks): TapeRun['frame'] => [0, at.floor / 2, at.floor * 1.06];
const bust = (at: Landmarks): TapeRun['frame'] => [0, at.armpit[1], (at.hip[1] - at.nape) * 1.1];
const arm = (at: Landmarks): TapeRun['frame'] => {
  const middle = onArm(at, at.armLength * 0.55);
  return [middle[0] * 0.75, middle[1], at.armLength * 1.5];
};
const backwards = (seen: string, frame: TapeRun['frame']): ReturnType<Run> => ({
  seen: [seen],
  behind: [],
  frame,
  view: 'back',
});
const forwards = (seen: string, frame: TapeRun['frame']): ReturnType<Run> => ({ seen: [seen], behind: [], frame });

const RUNS: Readonly<Record<BodyDimension, Run>> = {
  stature: (at) => forwards(straight([[at.hip[0] * 2.1, 0], [at.hip[0] * 2.1, at.floor]]), whole(at)),
  weight: (at) => ({ seen: [], behind: [], frame: whole(at) }),
  'chest-girth': (at) => ({ ...round(at.chestHalf, at.armpit[1] + (at.waist[1] - at.armpit[1]) * 0.14), frame: bust(at) }),
  'underbust-girth': (at) => ({ ...round(at.chestHalf * 0.97, at.armpit[1] + (at.waist[1] - at.armpit[1]) * 0.42), frame: bust(at) }),
  'waist-girth': (at) => ({ ...round(at.waist[0], at.waist[1]), frame: trunk(at) }),
  'hip-girth': (at) => ({ ...round(at.hip[0], at.hip[1]), frame: [0, at.waist[1], (at.hip[1] - at.nape) * 1.3] }),
  'neck-base-girth': (at) => ({ ...round(at.neckHalf * 1.15, at.nape + (at.shoulder[1] - at.nape) * 0.1), frame: [0, at.nape, at.shoulder[0] * 2.1] }),
  'across-back': (at) =>
    backwards(smooth([[-at.shoulder[0] * 0.95, at.shoulder[1]], [0, at.shoulder[1] + at.shoulder[0] * 0.05], [at.shoulder[0] * 0.95, at.shoulder[1]]]), bust(at)),
  'shoulder-length': (at) =>
    forwards(straight([[at.neckHalf * 1.1, at.nape], [at.shoulder[0] * 0.95, at.shoulder[1] - at.upperArmHalf * 0.1]]), [at.shoulder[0] * 0.4, at.shoulder[1], at.shoulder[0] * 2.2]),
  'back-waist-length': (at) => backwards(straight([[0, at.nape], [0, at.waist[1]]]), trunk(at)),
  'front-waist-length': (at) =>
    forwards(smooth([[at.neckHalf * 1.15, at.nape], [at.chestHalf * 0.52, at.armpit[1] + (at.waist[1] - at.armpit[1]) * 0.14], [at.waist[0] * 0.5, at.waist[1]]]), trunk(at)),
  'back-hip-length': (at) => backwards(straight([[0, at.nape], [0, at.hip[1]]]), trunk(at)),
  'nape-to-cuff': (at) =>
    backwards(
      smooth([[0, at.nape], [at.neckHalf * 1.1, at.nape], [at.shoulder[0] * 0.88, at.shoulder[1] - at.upperArmHalf * 0.1], onArm(at, at.armLength * 0.2, at.upperArmHalf * 0.7), onArm(at, at.armLength, at.wristHalf * 0.7)]),
      [at.shoulder[0] * 0.75, at.armpit[1] + at.armLength * 0.28, at.armLength * 1.75],
    ),
  'arm-length': (at) =>
    forwards(smooth([[at.shoulder[0] * 0.92, at.shoulder[1]], onArm(at, at.armLength * 0.25, at.upperArmHalf * 0.8), onArm(at, at.armLength, at.wristHalf * 0.8)]), arm(at)),
  'underarm-length': (at) => forwards(smooth([[at.armpit[0] * 1.05, at.armpit[1] + 12], onArm(at, at.armLength * 0.6, -at.upperArmHalf * 0.72), onArm(at, at.armLength, -at.wristHalf * 0.9)]), arm(at)),
  'scye-depth': (at) => ({
    seen: [straight([[0, at.nape], [0, at.armpit[1]]])],
    behind: [straight([[-at.armpit[0], at.armpit[1]], [at.armpit[0], at.armpit[1]]])],
    frame: bust(at),
    view: 'back',
  }),
  'scye-girth': (at) => {
    const middle: Point = [at.shoulder[0] * 0.9, (at.shoulder[1] + at.armpit[1]) / 2];
    const reach = (at.armpit[1] - at.shoulder[1]) / 2;
    const side = (by: number): string =>
      smooth([[middle[0], middle[1] - reach], [middle[0] + by, middle[1]], [middle[0], middle[1] + reach * 1.1]]);
    return { seen: [side(-reach * 0.45)], behind: [side(reach * 0.45)], frame: [middle[0] * 0.7, middle[1], at.shoulder[0] * 2.2] };
  },
  'upper-arm-girth': (at) => ({ ...roundArm(at, at.armLength * 0.3, at.upperArmHalf * 0.94), frame: arm(at) }),
  'forearm-girth': (at) => ({ ...roundArm(at, at.armLength * 0.62, at.upperArmHalf * 0.78), frame: arm(at) }),
  'wrist-girth': (at) => ({ ...roundArm(at, at.armLength * 0.97, at.wristHalf * 1.02), frame: arm(at) }),
  'hand-girth': (at) => {
    const palm = onArm(at, at.armLength + at.hand * 0.4);
    return { ...roundArm(at, at.armLength + at.hand * 0.42, at.wristHalf * 1.26), frame: [palm[0], palm[1], at.hand * 3] };
  },
  'head-girth': (at) => ({ ...round(at.headHalf * 0.99, at.brow), frame: [0, at.chin * 0.62, at.chin * 1.7] }),
  'waist-to-hip': (at) =>
    forwards(smooth([[at.waist[0] * 1.02, at.waist[1]], [(at.waist[0] * 0.35 + at.hip[0] * 0.65) * 1.02, (at.waist[1] + at.hip[1]) / 2], [at.hip[0] * 1.02, at.hip[1]]]), trunk(at)),
  'shoulder-girth': (at) => ({ ...round(at.shoulder[0] * 1.1, at.shoulder[1] + (at.armpit[1] - at.shoulder[1]) * 0.4), frame: bust(at) }),
}; // prettier-ignore

/** Where the tape runs for a measure. */
export function tapeRun(name: BodyDimension, at: Landmarks): TapeRun {
  return { view: 'front', ...RUNS[name](at) };
}
