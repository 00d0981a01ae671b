import type { EdgeName, Join, PieceName } from '../messages/advice.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';

type Place = readonly [piece: PieceName, edge: EdgeName];

/** Two edges that are joined; `mirrored` where one of them is of a mirrored copy. */
export interface Seam extends Pick<Join, 'mirrored' | 'open'> {
  readonly between: readonly [Place, Place];
}

/** A side of the wearer, and where it is on her front as seen from outside; on her back it is where she has it. */
interface Side {
  readonly back: 'left' | 'right';
  readonly front: 'left' | 'right';
  readonly frontPiece: PieceName;
  readonly copy: Pick<Join, 'mirrored'>;
}

function sidesOf({ choices }: GarmentModel): readonly [Side, Side] {
  const cardigan = choices.silhouette === 'cardigan';
  return [
    { back: 'left', front: 'right', frontPiece: cardigan ? 'left-front' : 'front', copy: {} },
    { back: 'right', front: 'left', frontPiece: cardigan ? 'right-front' : 'front', copy: { mirrored: 1 } },
  ];
}

/** Every join of a garment; `open` is how far its neck opens. Those of one edge come in the order in which they lie along it. mm */
export function seamsOf(m: GarmentModel, open: number): Seam[] {
  const sides = sidesOf(m);
  const opening = openSides(m).map((opens) => (opens && open > 0 ? { open } : {}));
  return [
    ...sides.flatMap((side, index) => [
      ...bodySeams(m, side, opening[index]!),
      ...armholeSeams(m, side, opening[index]!),
    ]),
    ...(m.sleeve
      ? [
          {
            between: [
              ['sleeve', 'right-seam'],
              ['sleeve', 'left-seam'],
            ],
          } as const,
        ]
      : []),
    ...bandSeams(m, sides),
  ];
}

/** Whether the seam on the wearer's left opens, and that on her right: of one, it is the left. */
function openSides({ choices }: GarmentModel): readonly [boolean, boolean] {
  const { at } = choices.opening;
  return [at === 'shoulder' || at === 'shoulders', at === 'shoulders'];
}

function bodySeams({ body }: GarmentModel, { back, front, frontPiece }: Side, opening: Pick<Join, 'open'>): Seam[] {
  return [
    {
      between: [
        ['back', `${back}-side`],
        [frontPiece, `${front}-side`],
      ],
    },
    ...(body.shoulders
      ? [
          {
            between: [
              ['back', `${back}-shoulder`],
              [frontPiece, `${front}-shoulder`],
            ],
            ...opening,
          } as const,
        ]
      : []),
  ];
}

/** A sleeve, or the band in its place: from the underarm up the back, and down the front. A raglan opens in front. */
function armholeSeams(m: GarmentModel, { back, front, frontPiece, copy }: Side, opening: Pick<Join, 'open'>): Seam[] {
  const edge = CONSTRUCTIONS[m.choices.construction].hasArmhole ? 'armhole' : 'raglan';
  const seam = (place: Place, onSleeve: EdgeName, more: Pick<Join, 'open'> = {}): Seam => ({
    between: [place, m.sleeve ? ['sleeve', onSleeve] : ['armhole-band', 'picked-up-edge']],
    ...copy,
    ...more,
  });
  return [
    seam(['back', `${back}-underarm`], 'back-underarm'),
    seam(['back', `${back}-${edge}`], `back-${edge}`),
    seam([frontPiece, `${front}-${edge}`], `front-${edge}`, edge === 'raglan' && m.sleeve ? opening : {}),
    seam([frontPiece, `${front}-underarm`], 'front-underarm'),
  ];
}

/** The neck band goes round from the wearer's left, or from the edge of her left front; a ring is closed with itself. */
function bandSeams(m: GarmentModel, sides: readonly [Side, Side]): Seam[] {
  const ring = (piece: PieceName): Seam => ({
    between: [
      [piece, 'right-end'],
      [piece, 'left-end'],
    ],
  });
  const [left, right] = sides;
  const onBand = (place: Place, copy: Pick<Join, 'mirrored'> = {}): Seam => ({
    between: [place, ['neck-band', 'picked-up-edge']],
    ...copy,
  });
  const top = ({ copy }: Side): Seam => onBand(['sleeve', 'top'], copy);
  const neck = ({ frontPiece }: Side): Seam => onBand([frontPiece, 'neck']);
  const back = onBand(['back', 'neck']);
  if (m.choices.silhouette !== 'cardigan')
    return [back, top(right), neck(left), top(left), ring('neck-band'), ...(m.sleeve ? [] : [ring('armhole-band')])];
  return [
    ...sides.map(({ frontPiece, copy }): Seam => ({
      between: [
        [frontPiece, 'front-edge'],
        ['front-band', 'picked-up-edge'],
      ],
      ...copy,
    })),
    ...besideFrontBands(m, onBand, left, [neck(left), top(left), back, top(right), neck(right)], right),
  ];
}

/** A V's band goes on from the front bands; any other is worked along their ends too. */
function besideFrontBands(
  { choices }: GarmentModel,
  onBand: (place: Place, copy: Pick<Join, 'mirrored'>) => Seam,
  left: Side,
  between: readonly Seam[],
  right: Side,
): Seam[] {
  const end: Place = ['front-band', 'right-end'];
  if (choices.neckline !== 'v') return [onBand(end, left.copy), ...between, onBand(end, right.copy)];
  return [
    ...between,
    { between: [end, ['neck-band', 'left-end']], ...left.copy },
    { between: [end, ['neck-band', 'right-end']], ...right.copy },
  ];
}
