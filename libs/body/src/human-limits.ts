import type { BodyDimension } from './body-dimension.ts';
import type { Figure } from './body.ts';

/** The smallest and the largest a person may be, mm (weight: g). */
export type Limits = readonly [smallest: number, largest: number];

/** Assumed: wider than anyone in a survey of adults (ANSUR I and II, NHANES), with room for the very small and the very large. */
const ADULT: Readonly<Record<BodyDimension, Limits>> = {
  stature: [1000, 2500],
  weight: [25_000, 350_000],
  'chest-girth': [550, 2200],
  'underbust-girth': [500, 2100],
  'waist-girth': [400, 2400],
  'hip-girth': [500, 2500],
  'neck-base-girth': [230, 750],
  'across-back': [220, 750],
  'shoulder-length': [60, 260],
  'back-waist-length': [250, 700],
  'front-waist-length': [220, 750],
  'back-hip-length': [380, 1000],
  'nape-to-cuff': [450, 1150],
  'arm-length': [350, 900],
  'underarm-length': [250, 750],
  'scye-depth': [90, 450],
  'scye-girth': [250, 1000],
  'upper-arm-girth': [140, 900],
  'forearm-girth': [120, 700],
  'wrist-girth': [90, 350],
  'hand-girth': [110, 400],
  'head-girth': [430, 720],
  'waist-to-hip': [60, 450],
  'shoulder-girth': [650, 2300],
};

/** Assumed: below the 2-year-old's and above the 16-year-old's published sizes. */
const CHILD: Readonly<Record<BodyDimension, Limits>> = {
  stature: [650, 2150],
  weight: [6_000, 200_000],
  'chest-girth': [400, 1600],
  'underbust-girth': [380, 1500],
  'waist-girth': [350, 1700],
  'hip-girth': [380, 1800],
  'neck-base-girth': [180, 600],
  'across-back': [150, 550],
  'shoulder-length': [35, 220],
  'back-waist-length': [150, 550],
  'front-waist-length': [140, 600],
  'back-hip-length': [220, 800],
  'nape-to-cuff': [280, 950],
  'arm-length': [200, 750],
  'underarm-length': [140, 600],
  'scye-depth': [70, 320],
  'scye-girth': [150, 750],
  'upper-arm-girth': [110, 600],
  'forearm-girth': [100, 450],
  'wrist-girth': [75, 280],
  'hand-girth': [85, 320],
  'head-girth': [410, 680],
  'waist-to-hip': [40, 350],
  'shoulder-girth': [450, 1700],
};

/** Assumed: from a premature newborn to above the published 24 months. */
const BABY: Readonly<Record<BodyDimension, Limits>> = {
  stature: [350, 1100],
  weight: [1_000, 25_000],
  'chest-girth': [220, 700],
  'underbust-girth': [220, 700],
  'waist-girth': [210, 700],
  'hip-girth': [210, 700],
  'neck-base-girth': [120, 350],
  'across-back': [90, 320],
  'shoulder-length': [20, 110],
  'back-waist-length': [80, 320],
  'front-waist-length': [80, 320],
  'back-hip-length': [110, 450],
  'nape-to-cuff': [150, 550],
  'arm-length': [100, 400],
  'underarm-length': [80, 330],
  'scye-depth': [40, 180],
  'scye-girth': [90, 380],
  'upper-arm-girth': [60, 300],
  'forearm-girth': [60, 260],
  'wrist-girth': [50, 190],
  'hand-girth': [55, 210],
  'head-girth': [260, 580],
  'waist-to-hip': [20, 180],
  'shoulder-girth': [240, 800],
};

const OF_FIGURE: Readonly<Record<Figure, Readonly<Record<BodyDimension, Limits>>>> = {
  woman: ADULT,
  man: ADULT,
  unsaid: ADULT,
  child: CHILD,
  baby: BABY,
};

/** Between which ends a dimension of such a figure lies, generously. mm; weight in g. */
export function humanLimits(figure: Figure, dimension: BodyDimension): Limits {
  return OF_FIGURE[figure][dimension];
}

/**
 * The ages a figure is for, years (assumed). The adults' begin at 12: a younger body never meets the adult model, whose
 * surveys hold none. "Child" runs on a little beyond the published 16.
 */
export const AGES: Readonly<Record<Figure, Limits>> = {
  woman: [12, 120],
  man: [12, 120],
  unsaid: [12, 120],
  child: [0, 20],
  baby: [0, 5],
};
