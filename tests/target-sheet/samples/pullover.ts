import type { AdviceInWords, Piece } from '#target-sheet';
import { across, along, assembled, because, join, neckCurve } from './build.ts';

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

const sides = (withBody: 'back' | 'front', armholes: boolean) => [
  join('left side', withBody, underarm),
  join('right side', withBody, underarm),
  join('left shoulder', withBody, shoulder),
  join('right shoulder', withBody, shoulder),
  ...(armholes ? [join('left armhole', 'sleeve', A), join('right armhole', 'sleeve', A)] : []),
];

function body(piece: 'back' | 'front', neckDepth: number, neckEdge: number): Piece {
  return {
    piece,
    make: 1,
    mirrored: 0,
    workedFrom: 'hem',
    outline: [
      [0, 0],
      [p, 0],
      [p, underarm],
      [p, height],
      ...neckCurve(p / 2, height, neckWidth, neckDepth),
      [0, height],
      [0, underarm],
    ],
    joins: sides(piece === 'back' ? 'front' : 'back', true),
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

const sleevePiece: Piece = {
  piece: 'sleeve',
  make: 2,
  mirrored: 0,
  workedFrom: 'cuff',
  outline: [
    [0, 0],
    [cuff, 0],
    [cuff / 2 + A, sleeve],
    [cuff / 2, sleeve],
    [cuff / 2 - A, sleeve],
  ],
  joins: [join('back armhole edge', 'back', A), join('front armhole edge', 'front', A)],
  dimensions: [
    across('cuff-width', cuff, { fabric: 'rib' }),
    across('sleeve-top-width', sleeveTop),
    along('sleeve-length', sleeve),
    along('underarm-seam', sleeve),
    along('rib-depth', 50, { fabric: 'rib' }),
  ],
};

const neckBand: Piece = {
  piece: 'neck-band',
  make: 1,
  mirrored: 0,
  workedFrom: 'edge',
  outline: [
    [0, 0],
    [521, 0],
    [521, 25],
    [0, 25],
  ],
  joins: [],
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
      comfort: true,
      verdict: 'unknown',
      advice: 'Measure round the hand.',
      needs: ['hand-girth'],
    },
    { check: 'seam', comfort: false, verdict: 'n/a', advice: 'Nothing is made yet.' },
    {
      check: 'hip',
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
  collisions: [{ wishes: ['a classic fit at the chest', 'a hem that passes the hip'], dimension: 'chest-width' }],
  cautions: [{ code: 'fibre-allergy', text: 'Some people cannot wear wool. Try a swatch on the skin first.' }],
  notes: [
    {
      code: 'no-growth',
      text: 'No washed swatch: growth is taken as none.',
      source: 'practice',
    },
  ],
};
