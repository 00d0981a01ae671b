import type { AdviceInWords, Piece } from '#target-sheet';
import { across, along, assembled, bandRegion, because, edges, neckCurve, regions, to } from './build.ts';

/** Worked example 1 of the model (drop shoulder, chest 940, t 6, classic), in millimetres to one decimal. */
const p = 510.9;
const height = 607.6;
const underarm = 360.4;
const A = 247.2;
const neckWidth = 193.1;
const sleeveTop = 2 * A;
const cuff = 188.1;
const sleeve = 487.5;
const shoulder = (p - neckWidth) / 2;

function body(piece: 'back' | 'front', neckDepth: number, neckEdge: number): Piece {
  const other = piece === 'back' ? 'front' : 'back';
  const outline = [
    [0, 0],
    [p, 0],
    [p, underarm],
    [p, height],
    ...neckCurve(p / 2, height, neckWidth, neckDepth),
    [0, height],
    [0, underarm],
  ] as const;
  // The right of a back is the wearer's, and of a front her left: the sleeve drawn is her left.
  const [rightSleeve, leftSleeve] = piece === 'back' ? ([1, undefined] as const) : ([undefined, 1] as const);
  return {
    piece,
    make: 1,
    mirrored: 0,
    workedFrom: 'hem',
    outline,
    edges: edges(outline, [
      ['hem', 1, 'straight'],
      ['right-side', 1, 'straight', to(other, 'left-side')],
      ['right-armhole', 1, 'straight', to('sleeve', `${piece}-armhole`, rightSleeve)],
      ['right-shoulder', 1, 'straight', to(other, 'left-shoulder')],
      ['neck', 16, 'curve'],
      ['left-shoulder', 1, 'straight', to(other, 'right-shoulder')],
      ['left-armhole', 1, 'straight', to('sleeve', `${piece}-armhole`, leftSleeve)],
      ['left-side', 1, 'straight', to(other, 'right-side')],
    ]),
    regions: regions('body', 50, height, p),
    identities: [],
    dimensions: [
      across('width', p, {
        low: 504.4,
        high: 523.4,
        u: 7.5,
        follows: [{ piece: 'sleeve', name: 'sleeve-length', slope: -0.5 }],
      }),
      along('shoulder-to-hem', height),
      ...(piece === 'back' ? [along('centre-back-length', height - neckDepth)] : []),
      along('body-to-underarm', underarm),
      along('armhole-depth', A),
      across('shoulder-width', shoulder),
      across('neck-width', neckWidth),
      along(piece === 'back' ? 'back-neck-depth' : 'front-neck-depth', neckDepth),
      across('neck-edge', neckEdge),
      along('rib-depth', 50, { fabric: 'rib' }),
    ],
  };
}

const sleeveOutline = [
  [0, 0],
  [cuff, 0],
  [cuff / 2 + A, sleeve],
  [cuff / 2, sleeve],
  [cuff / 2 - A, sleeve],
] as const;

const sleevePiece: Piece = {
  piece: 'sleeve',
  make: 2,
  mirrored: 1,
  workedFrom: 'cuff',
  outline: sleeveOutline,
  edges: edges(sleeveOutline, [
    ['cuff', 1, 'straight'],
    ['right-seam', 1, 'slope', to('sleeve', 'left-seam')],
    ['back-armhole', 1, 'straight', to('back', 'left-armhole'), to('back', 'right-armhole', 1)],
    ['front-armhole', 1, 'straight', to('front', 'right-armhole'), to('front', 'left-armhole', 1)],
    ['left-seam', 1, 'slope', to('sleeve', 'right-seam')],
  ]),
  regions: regions('sleeve', 50, sleeve, cuff),
  identities: [],
  dimensions: [
    across('cuff-width', cuff, { fabric: 'rib' }),
    across('sleeve-top-width', sleeveTop),
    along('sleeve-length', sleeve),
    along('underarm-seam', sleeve),
    along('rib-depth', 50, { fabric: 'rib' }),
  ],
};

const bandOutline = [
  [0, 0],
  [521, 0],
  [521, 25],
  [0, 25],
] as const;

const neckBand: Piece = {
  piece: 'neck-band',
  make: 1,
  mirrored: 0,
  workedFrom: 'edge',
  outline: bandOutline,
  edges: edges(bandOutline, [
    ['picked-up-edge', 1, 'straight'],
    ['right-end', 1, 'straight', to('neck-band', 'left-end')],
    ['free-edge', 1, 'straight'],
    ['left-end', 1, 'straight', to('neck-band', 'right-end')],
  ]),
  regions: bandRegion(521, 25),
  identities: [],
  dimensions: [across('neck-edge', 521, { fabric: 'rib' }), along('band-depth', 25, { fabric: 'rib' })],
};

export const pullover: AdviceInWords = {
  design: {
    silhouette: 'pullover',
    construction: 'drop-shoulder',
    length: 'regular',
    neckline: 'crew',
    basis: 'body',
    opening: { at: 'none', length: 0 },
    ease: {
      category: 'classic',
      place: 0.5,
      chosen: 75,
      tableTerms: 75,
      lies: 'classic',
      flat: 87,
      room: 63,
      chanceOfBand: 0.83,
    },
  },
  assembled: [
    assembled('chest-width', 513.5, {
      u: 7.5,
      low: 507,
      high: 526,
      because: [
        because('half of chest girth', 470, 7.5, 'measured at home'),
        because('half of ease, classic', 37.5, 0, 'Craft Yarn Council, Standards & Guidelines (from memory)'),
        because('thicker fabric than ordinary', 6, 0.6, '2(t − t₀), t measured, t₀ assumed'),
      ],
    }),
    assembled('centre-back-length', 587),
    assembled('shoulder-to-hem', height),
    assembled('body-to-underarm', underarm),
    assembled('armhole-depth', A),
    assembled('neck-width', 143.1),
    assembled('front-neck-depth', 74.2),
    assembled('back-neck-depth', 20.6),
    assembled('neck-opening', 385),
    assembled('sleeve-length', sleeve),
    assembled('cuff-width', 100),
    assembled('neck-to-cuff', 743),
  ],
  pieces: [body('back', 45.6, 217), body('front', 99.2, 304), sleevePiece, neckBand],
  checks: [
    {
      check: 'head-through-neck',
      unit: 'mm',
      comfort: false,
      verdict: 'tight',
      need: 561,
      have: 577.5,
      margin: 16.5,
      u: 14.8,
      chanceOfFailing: 0.13,
      advice: 'Bind off the neck loosely, or try the band on before closing it.',
    },
    {
      check: 'sleeve-taper',
      unit: '1',
      comfort: true,
      verdict: 'fine',
      need: 0.35,
      have: 0.5,
      margin: 0.15,
      u: 0.02,
      chanceOfFailing: 0,
      advice: '',
    },
    {
      check: 'cuff-stays',
      unit: 'mm',
      comfort: true,
      verdict: 'unknown',
      advice: 'Measure round the hand.',
      needs: ['hand-girth'],
    },
    { check: 'seam', unit: 'mm', comfort: false, verdict: 'n/a', advice: 'Nothing is made yet.' },
    {
      check: 'hip',
      unit: 'mm',
      comfort: false,
      verdict: 'fails',
      need: 1010,
      have: 1003,
      margin: -7,
      u: 15,
      chanceOfFailing: 0.68,
      advice: 'Add 7 mm of width at the hem, or make it shorter.',
      remedies: [{ text: 'Crop it', change: { length: 'cropped' } }],
    },
  ],
  collisions: [
    {
      wishes: [{ text: 'a classic fit at the chest' }, { text: 'a hem that passes the hip' }],
      piece: 'assembled',
      dimension: 'chest-width',
    },
  ],
  cautions: [{ code: 'fibre-allergy', text: 'Some people cannot wear wool. Try a swatch on the skin first.' }],
  notes: [
    {
      code: 'no-growth',
      text: 'No washed swatch: growth is taken as none.',
      source: 'practice',
    },
  ],
};
