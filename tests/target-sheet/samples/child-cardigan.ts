import type { AdviceInWords, Piece } from '#target-sheet';
import { across, along, assembled, join, neckCurve } from './build.ts';

/** Worked example 5 of the model as a raglan cardigan (child 6, t 4), in millimetres to one decimal; a neck without advice. */
const p = 349.5;
const underarm = 244.5;
const bindOff = 17.5;
const backNeck = 153.3;
const run = (p - backNeck) / 2 - bindOff;
const rise = 143.5;
const edge = Math.hypot(run, rise);

const q = 25.4;
const frontWidth = (p + q) / 2 - q;
const sleeveUnderarm = 285.3;
const sleeveTop = 220;
const sleeveHalfNeck = sleeveTop / 2 - bindOff - Math.sqrt(edge ** 2 - 150.2 ** 2);
const cuff = 150;

const back: Piece = {
  piece: 'back',
  make: 1,
  mirrored: 0,
  workedFrom: 'hem',
  outline: [
    [0, 0],
    [p, 0],
    [p, underarm],
    [p - bindOff, underarm],
    [p - bindOff - run, underarm + rise],
    [bindOff + run, underarm + rise],
    [bindOff, underarm],
    [0, underarm],
  ],
  joins: [
    join('left side', 'left-front', underarm),
    join('right side', 'right-front', underarm),
    join('left raglan', 'sleeve', edge),
    join('right raglan', 'sleeve', edge),
  ],
  dimensions: [
    across('width', p),
    along('centre-back-length', underarm + rise),
    along('body-to-underarm', underarm),
    along('raglan-depth', rise),
    across('raglan-bind-off', bindOff),
    across('neck-width', backNeck),
    along('rib-depth', 42, { fabric: 'rib' }),
  ],
};

const frontTop = frontWidth - bindOff - run;
/** Its front edge on the left, its side on the right, as it lies when seen from outside. */
const leftOutline = [
  [0, 0],
  [frontWidth, 0],
  [frontWidth, underarm],
  [frontWidth - bindOff, underarm],
  [frontTop, underarm + rise],
  ...neckCurve(0, underarm + rise, 2 * frontTop, 40).slice(1, 9),
] as const;

const front = (piece: 'left-front' | 'right-front'): Piece => ({
  piece,
  make: 1,
  mirrored: 0,
  workedFrom: 'hem',
  outline:
    piece === 'left-front' ? leftOutline : leftOutline.map(([x, y]) => [frontWidth - x, y] as const).toReversed(),
  joins: [
    join(piece === 'left-front' ? 'left side' : 'right side', 'back', underarm),
    join(piece === 'left-front' ? 'left raglan' : 'right raglan', 'sleeve', edge),
    join('front edge', 'front-band', underarm + rise - 40),
  ],
  dimensions: [
    across('width', frontWidth),
    along('body-to-underarm', underarm),
    along('raglan-depth', rise),
    across('raglan-bind-off', bindOff),
    across('neck-width', frontTop),
    along('front-neck-depth', 40),
    along('front-edge', underarm + rise - 40),
    along('rib-depth', 42, { fabric: 'rib' }),
  ],
});

const sleeve: Piece = {
  piece: 'sleeve',
  make: 2,
  mirrored: 1,
  workedFrom: 'cuff',
  outline: [
    [0, 0],
    [cuff, 0],
    ...[
      [sleeveTop / 2, 0] as const,
      [sleeveTop / 2 - bindOff, 0] as const,
      [sleeveHalfNeck, 150.2] as const,
      [-sleeveHalfNeck, 150.2] as const,
      [bindOff - sleeveTop / 2, 0] as const,
      [-sleeveTop / 2, 0] as const,
    ].map(([x, y]) => [cuff / 2 + x, sleeveUnderarm + y] as const),
  ],
  joins: [join('back armhole edge', 'back', edge), join('front armhole edge', 'left-front', edge)],
  dimensions: [
    across('cuff-width', cuff, { fabric: 'rib' }),
    across('sleeve-top-width', sleeveTop),
    across('cap-top-width', 2 * sleeveHalfNeck),
    along('sleeve-length', sleeveUnderarm + 150.2),
    along('underarm-seam', sleeveUnderarm),
    along('sleeve-raglan-depth', 150.2),
    along('rib-depth', 42, { fabric: 'rib' }),
  ],
};

const noNeck = {
  value: null,
  because: [],
  noAdvice: { needs: ['neck-base-girth' as const], reason: 'Take neck base girth. No table gives it.' },
};

const frontBand: Piece = {
  piece: 'front-band',
  make: 2,
  mirrored: 0,
  workedFrom: 'edge',
  outline: [
    [0, 0],
    [underarm + rise - 40, 0],
    [underarm + rise - 40, q],
    [0, q],
  ],
  joins: [join('front edge', 'left-front', underarm + rise - 40)],
  dimensions: [
    across('front-edge', underarm + rise - 40, { fabric: 'rib' }),
    along('band-depth', q, { fabric: 'rib' }),
    along('band-overlap', q, { fabric: 'rib' }),
  ],
};

const neckBand: Piece = {
  piece: 'neck-band',
  make: 1,
  mirrored: 0,
  workedFrom: 'edge',
  joins: [],
  dimensions: [
    { name: 'neck-edge', axis: 'across', fabric: 'rib', allowance: 0, asMade: null, ...noNeck },
    along('band-depth', 21.1, { fabric: 'rib' }),
  ],
};

export const childCardigan: AdviceInWords = {
  design: {
    silhouette: 'cardigan',
    construction: 'raglan',
    length: 'regular',
    neckline: 'crew',
    basis: 'body',
    opening: { at: 'none', length: 0 },
    ease: {
      category: 'classic',
      place: 0.5,
      chosen: 63.4,
      tableTerms: 63.4,
      lies: 'classic',
      flat: 67.4,
      room: 51.4,
      chanceOfBand: null,
    },
  },
  assembled: [
    assembled('chest-width', 351.2),
    assembled('centre-back-length', 367),
    assembled('raglan-depth', 164.6),
    { name: 'neck-width', ...noNeck },
    { name: 'neck-opening', ...noNeck },
    assembled('sleeve-length', sleeveUnderarm + 150.2),
  ],
  pieces: [back, front('left-front'), front('right-front'), sleeve, frontBand, neckBand],
  checks: [
    { check: 'head-through-neck', comfort: false, verdict: 'n/a', advice: 'A cardigan opens.' },
    {
      check: 'upper-arm',
      comfort: false,
      verdict: 'fine',
      need: 203,
      have: 215,
      margin: 12,
      u: 5,
      chanceOfFailing: 0.01,
      advice: '',
    },
  ],
  collisions: [],
  cautions: [
    {
      code: 'child-no-cords',
      text: 'No cords, ribbons or ties at the neck. Local rules for children’s clothes come first.',
    },
    {
      code: 'child-closures',
      text: 'Buttons must not come off in a mouth: sew them through both layers and pull hard.',
    },
  ],
  notes: [],
};
