import type { CountableSheet } from '#counts';

type Piece = CountableSheet['pieces'][number];
type Dimension = Piece['dimensions'][number];

const dimension = (
  axis: 'across' | 'along',
  name: string,
  value: number,
  more: Partial<Dimension> = {},
): Dimension => ({
  name,
  axis,
  fabric: 'main',
  value,
  allowance: 0,
  low: value - 0.4,
  high: value + 0.4,
  ...more,
});
const across = (name: string, value: number, more: Partial<Dimension> = {}) => dimension('across', name, value, more);
const along = (name: string, value: number, more: Partial<Dimension> = {}) => dimension('along', name, value, more);
const edge = (name: string, from: number, to: number, length: number, joins: Piece['edges'][number]['joins'] = []) => ({
  edge: name,
  from,
  to,
  kind: 'straight' as const,
  length,
  joins,
});

/** A body 17 in wide: 2 in of rib, 6 in plain, 8 in up to the shoulders, which the V of the front begins with. In inches. */
function body(piece: 'back' | 'front'): Piece {
  const other = piece === 'back' ? 'front' : 'back';
  const depth = piece === 'back' ? 1 : 8;
  const shoulder = Math.hypot(3, depth);
  return {
    piece,
    outline: [
      [0, 0],
      [17, 0],
      [17, 9],
      [17, 16],
      [11.5, 16],
      [8.5, 16 - depth],
      [5.5, 16],
      [0, 16],
      [0, 9],
    ],
    edges: [
      edge('hem', 0, 1, 17),
      edge('right-side', 1, 2, 9, [{ piece: other, edge: 'left-side' }]),
      edge('right-armhole', 2, 3, 7, [{ piece: 'sleeve', edge: `${piece}-armhole` }]),
      edge('right-shoulder', 3, 4, 5.5, [{ piece: other, edge: 'left-shoulder' }]),
      { ...edge('neck', 4, 6, 2 * shoulder, [{ piece: 'neck-band', edge: 'picked-up-edge' }]), kind: 'slope' },
      edge('left-shoulder', 6, 7, 5.5, [{ piece: other, edge: 'right-shoulder' }]),
      edge('left-armhole', 7, 8, 7, [{ piece: 'sleeve', edge: `${piece}-armhole` }]),
      edge('left-side', 8, 0, 9, [{ piece: other, edge: 'right-side' }]),
    ],
    regions: [
      { region: 'rib', fabric: 'rib', from: 0, to: 2, stitches: 'as-above', width: 17, startsAt: 17 },
      { region: 'body', fabric: 'main', from: 2, to: 16, width: 17 },
    ],
    dimensions: [
      across('width', 17),
      across('cross-back-width', 17),
      across('armhole-inset', 0),
      across('shoulder-width', 5.5),
      across('neck-width', 6),
      along('shoulder-to-hem', 16),
      along('body-to-underarm', 9),
      along('armhole-depth', 7),
      along(`${piece}-neck-depth`, depth),
      along('rib-depth', 2, { fabric: 'rib' }),
    ],
    identities: [
      { name: 'cross-back-width', equals: [{ name: 'width', times: 1 }] },
      {
        name: 'armhole-inset',
        equals: [
          { name: 'width', times: 0.5 },
          { name: 'cross-back-width', times: -0.5 },
        ],
      },
      {
        name: 'shoulder-width',
        equals: [
          { name: 'cross-back-width', times: 0.5 },
          { name: 'neck-width', times: -0.5 },
        ],
      },
      {
        name: 'body-to-underarm',
        equals: [
          { name: 'shoulder-to-hem', times: 1 },
          { name: 'armhole-depth', times: -1 },
        ],
      },
    ],
  };
}

/** From 9½ in at the cuff to 14 in at the top, over 19 in. */
const sleeve: Piece = {
  piece: 'sleeve',
  outline: [
    [0, 0],
    [9.5, 0],
    [11.75, 19],
    [4.75, 19],
    [-2.25, 19],
  ],
  edges: [
    edge('cuff', 0, 1, 9.5),
    { ...edge('right-seam', 1, 2, 19.13, [{ piece: 'sleeve', edge: 'left-seam' }]), kind: 'slope' },
    edge('front-armhole', 2, 3, 7, [{ piece: 'front', edge: 'right-armhole' }]),
    edge('back-armhole', 3, 4, 7, [{ piece: 'back', edge: 'left-armhole' }]),
    { ...edge('left-seam', 4, 0, 19.13, [{ piece: 'sleeve', edge: 'right-seam' }]), kind: 'slope' },
  ],
  regions: [{ region: 'sleeve', fabric: 'main', from: 0, to: 19, width: 9.5 }],
  dimensions: [across('sleeve-top-width', 14), across('cuff-width', 9.5), along('sleeve-length', 19)],
  identities: [{ name: 'sleeve-top-width', equals: [{ piece: 'back', name: 'armhole-depth', times: 2 }] }],
};

const NECK_EDGE = 2 * Math.hypot(3, 1) + 2 * Math.hypot(3, 8);

const neckBand: Piece = {
  piece: 'neck-band',
  outline: [
    [0, 0],
    [NECK_EDGE, 0],
    [NECK_EDGE, 1],
    [0, 1],
  ],
  edges: [
    edge('picked-up-edge', 0, 1, NECK_EDGE, [
      { piece: 'back', edge: 'neck' },
      { piece: 'front', edge: 'neck' },
    ]),
    edge('right-end', 1, 2, 1, [{ piece: 'neck-band', edge: 'left-end' }]),
    edge('free-edge', 2, 3, NECK_EDGE),
    edge('left-end', 3, 0, 1, [{ piece: 'neck-band', edge: 'right-end' }]),
  ],
  regions: [{ region: 'rib', fabric: 'rib', from: 0, to: 1, stitches: 'own', width: NECK_EDGE }],
  dimensions: [
    across('neck-edge', NECK_EDGE, { fabric: 'rib', derived: true }),
    along('band-depth', 1, { fabric: 'rib' }),
  ],
  identities: [],
};

/** A pullover with drop shoulders and a V, in inches. */
export const V_NECK: CountableSheet = { pieces: [body('back'), body('front'), sleeve, neckBand] };
