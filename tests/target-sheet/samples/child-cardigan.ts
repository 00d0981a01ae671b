import type { AdviceInWords, Piece } from '#target-sheet';
import { across, along, assembled, bandRegion, edges, neckCurve, regions, to } from './build.ts';

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

const backOutline = [
  [0, 0],
  [p, 0],
  [p, underarm],
  [p - bindOff, underarm],
  [p - bindOff - run, underarm + rise],
  [bindOff + run, underarm + rise],
  [bindOff, underarm],
  [0, underarm],
] as const;

const back: Piece = {
  piece: 'back',
  make: 1,
  mirrored: 0,
  workedFrom: 'hem',
  outline: backOutline,
  edges: edges(backOutline, [
    ['hem', 1, 'straight'],
    ['right-side', 1, 'straight', to('right-front', 'left-side')],
    ['right-underarm', 1, 'straight', to('sleeve', 'back-underarm', 1)],
    ['right-raglan', 1, 'slope', to('sleeve', 'back-raglan', 1)],
    ['neck', 1, 'straight'],
    ['left-raglan', 1, 'slope', to('sleeve', 'back-raglan')],
    ['left-underarm', 1, 'straight', to('sleeve', 'back-underarm')],
    ['left-side', 1, 'straight', to('left-front', 'right-side')],
  ]),
  regions: regions('body', 42, underarm + rise, p),
  identities: [],
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

const mirroredOutline = leftOutline.map(([x, y]) => [frontWidth - x, y] as const).toReversed();
/** From the left end of its hem on, as every outline. */
const rightOutline = [...mirroredOutline.slice(-2), ...mirroredOutline.slice(0, -2)];

const leftEdges = edges(leftOutline, [
  ['hem', 1, 'straight'],
  ['right-side', 1, 'straight', to('back', 'left-side')],
  ['right-underarm', 1, 'straight', to('sleeve', 'front-underarm')],
  ['right-raglan', 1, 'slope', to('sleeve', 'front-raglan')],
  ['neck', 8, 'curve'],
  ['front-edge', 1, 'straight', to('front-band', 'picked-up-edge')],
]);

const rightEdges = edges(rightOutline, [
  ['hem', 1, 'straight'],
  ['front-edge', 1, 'straight', to('front-band', 'picked-up-edge', 1)],
  ['neck', 8, 'curve'],
  ['left-raglan', 1, 'slope', to('sleeve', 'front-raglan', 1)],
  ['left-underarm', 1, 'straight', to('sleeve', 'front-underarm', 1)],
  ['left-side', 1, 'straight', to('back', 'right-side')],
]);

const front = (piece: 'left-front' | 'right-front'): Piece => ({
  piece,
  make: 1,
  mirrored: 0,
  workedFrom: 'hem',
  outline: piece === 'left-front' ? leftOutline : rightOutline,
  edges: piece === 'left-front' ? leftEdges : rightEdges,
  regions: regions('body', 42, underarm + rise, frontWidth),
  identities: [],
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

const sleeveOutline = [
  [0, 0] as const,
  [cuff, 0] as const,
  ...[
    [sleeveTop / 2, 0] as const,
    [sleeveTop / 2 - bindOff, 0] as const,
    [sleeveHalfNeck, 150.2] as const,
    [-sleeveHalfNeck, 150.2] as const,
    [bindOff - sleeveTop / 2, 0] as const,
    [-sleeveTop / 2, 0] as const,
  ].map(([x, y]) => [cuff / 2 + x, sleeveUnderarm + y] as const),
];

const sleeve: Piece = {
  piece: 'sleeve',
  make: 2,
  mirrored: 1,
  workedFrom: 'cuff',
  outline: sleeveOutline,
  edges: edges(sleeveOutline, [
    ['cuff', 1, 'straight'],
    ['right-seam', 1, 'slope', to('sleeve', 'left-seam')],
    ['back-underarm', 1, 'straight', to('back', 'left-underarm'), to('back', 'right-underarm', 1)],
    ['back-raglan', 1, 'slope', to('back', 'left-raglan'), to('back', 'right-raglan', 1)],
    ['top', 1, 'straight'],
    ['front-raglan', 1, 'slope', to('left-front', 'right-raglan'), to('right-front', 'left-raglan', 1)],
    ['front-underarm', 1, 'straight', to('left-front', 'right-underarm'), to('right-front', 'left-underarm', 1)],
    ['left-seam', 1, 'slope', to('sleeve', 'right-seam')],
  ]),
  regions: regions('sleeve', 42, sleeveUnderarm + 150.2, cuff),
  identities: [],
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

const bandOutline = [
  [0, 0],
  [underarm + rise - 40, 0],
  [underarm + rise - 40, q],
  [0, q],
] as const;

const frontBand: Piece = {
  piece: 'front-band',
  make: 2,
  mirrored: 1,
  workedFrom: 'edge',
  outline: bandOutline,
  edges: edges(bandOutline, [
    ['picked-up-edge', 1, 'straight', to('left-front', 'front-edge'), to('right-front', 'front-edge', 1)],
    ['right-end', 1, 'straight'],
    ['free-edge', 1, 'straight'],
    ['left-end', 1, 'straight'],
  ]),
  regions: bandRegion(underarm + rise - 40, q),
  identities: [],
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
  edges: [],
  regions: [],
  identities: [],
  dimensions: [
    {
      name: 'neck-edge',
      axis: 'across',
      fabric: 'rib',
      defining: false,
      derived: true,
      allowance: 0,
      asMade: null,
      ...noNeck,
    },
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
    { check: 'head-through-neck', unit: 'mm', comfort: false, verdict: 'n/a', advice: 'A cardigan opens.' },
    {
      check: 'upper-arm',
      unit: 'mm',
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
