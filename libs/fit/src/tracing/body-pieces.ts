import type { Quantity } from '#measure';
import type { DimensionName, IdentityTerm, PieceName } from '../messages/advice.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { across, along, byItself, equalTo, term, type PlannedOnPiece, type PlannedPiece } from '../model/planned.ts';

export const backPiece = (m: GarmentModel): PlannedPiece => bodyPiece('back', m);

function bodyPiece(piece: PieceName, m: GarmentModel): PlannedPiece {
  const { girths, armhole, neck, body, rounded, choices, widths } = m;
  const construction = CONSTRUCTIONS[choices.construction];
  const half = piece.endsWith('-front') ? body.half : null;
  const front = piece !== 'back';
  const { shoulders } = body;
  // A front with a band is joined at its side; its other edge carries the band.
  const sides = half ? 1 : 2;
  const panel = half?.panel ?? (front ? girths.frontPanel : girths.backPanel);
  const hem = across('hem-width', half?.hem ?? (front ? girths.frontHem : girths.backHem), sides, rounded.hem);
  return {
    piece,
    make: 1,
    mirrored: 0,
    workedFrom: 'hem',
    dimensions: [
      across('width', panel, sides, rounded.chest),
      girths.hemFlat === girths.bodyFlat ? equalTo(hem, term(1, 'width')) : hem,
      ...(shoulders && !half ? [crossBack(front ? shoulders.frontWidth : shoulders.backWidth)] : []),
      ...(shoulders
        ? [
            equalTo(
              along('shoulder-to-hem', body.shoulderToHem, 1, rounded.length),
              term(1, 'centre-back-length'),
              term(1, 'back-neck-depth'),
            ),
          ]
        : []),
      // A front with shoulders has no centre back.
      ...(front && shoulders ? [] : [along('centre-back-length', body.pieceLength, 1, rounded.length)]),
      equalTo(along('body-to-underarm', body.pieceToUnderarm, 0, rounded.length), ...belowUnderarm(m)),
      ...construction.bodyDimensions(m, front),
      across('neck-width', half?.neck ?? armhole.pieceNeck.width, 0, rounded.neckWidth),
      ...(front ? [along('front-neck-depth', armhole.pieceNeck.front, 0, byItself(neck.front))] : []),
      ...(!front && shoulders ? [along('back-neck-depth', armhole.pieceNeck.back, 0, byItself(neck.back))] : []),
      ...(half
        ? [
            equalTo(
              along('front-edge', half.edge, 0),
              term(1, shoulders ? 'shoulder-to-hem' : 'centre-back-length'),
              term(-1, 'front-neck-depth'),
            ),
          ]
        : []),
      along('rib-depth', body.rib, 0, byItself(body.rib), 'rib'),
    ],
  };

  function crossBack(width: Quantity): PlannedOnPiece {
    const planned = across('cross-back-width', width, sides, rounded.width!);
    return widths.straight ? equalTo(planned, term(1, 'width')) : planned;
  }
}

/** What lies below the underarm: the body's length without what lies above. */
function belowUnderarm({ body }: GarmentModel): IdentityTerm[] {
  if (!body.shoulders) return [term(1, 'centre-back-length'), term(-1, 'raglan-depth')];
  const fall = body.shoulderFall ? [term(-1, 'shoulder-fall')] : [];
  return [term(1, 'shoulder-to-hem'), term(-1, 'armhole-depth'), ...fall];
}

const isMadeApart = ({ made }: GarmentModel['choices']): boolean => made.back && made.front;

/** What a piece shares with another, but for the dimensions named. */
const asOn = (
  other: PieceName,
  own: readonly DimensionName[],
  dimensions: readonly PlannedOnPiece[],
): PlannedOnPiece[] =>
  dimensions.map((planned) => (own.includes(planned.name) ? planned : equalTo(planned, term(1, planned.name, other))));

/** A front in one piece is the back, but for its neck; two pieces that were made are each as wide as they are. */
export function frontPiece(m: GarmentModel): PlannedPiece {
  const front = bodyPiece('front', m);
  const widths = ['width', 'hem-width', 'cross-back-width', 'armhole-inset', 'shoulder-width'] as const;
  const own: readonly DimensionName[] = ['front-neck-depth', ...(isMadeApart(m.choices) ? widths : [])];
  return { ...front, dimensions: asOn('back', own, front.dimensions) };
}

/** Half a front joins the back at its side and shoulder; beside its neck it is as wide as they ask. The right front is the left one's mirror image. */
export function halfFrontPiece(piece: 'left-front' | 'right-front', m: GarmentModel): PlannedPiece {
  const front = bodyPiece(piece, m);
  if (piece === 'right-front') return { ...front, dimensions: asOn('left-front', [], front.dimensions) };
  const own = halfFrontIdentities(m);
  const shared = asOn('back', ['width', 'neck-width', 'front-neck-depth', 'front-edge'], front.dimensions);
  return {
    ...front,
    dimensions: shared.map((planned) => {
      const terms = own[planned.name];
      return terms ? equalTo(planned, ...terms) : planned;
    }),
  };
}

/** What of a left front is not the back's. One that was made is as wide as it is, and its shoulder what is left. */
function halfFrontIdentities({
  girths,
  body,
  choices,
}: GarmentModel): Partial<Record<DimensionName, readonly IdentityTerm[]>> {
  const hem =
    girths.hemFlat === girths.bodyFlat
      ? [term(1, 'width')]
      : [term(1, 'width'), term(0.5, 'hem-width', 'back'), term(-0.5, 'width', 'back')];
  if (isMadeApart(choices))
    return {
      'hem-width': hem,
      ...(body.shoulders && {
        'shoulder-width': [term(1, 'width'), term(-1, 'armhole-inset'), term(-1, 'neck-width')],
      }),
    };
  return {
    'hem-width': hem,
    width: body.shoulders
      ? [term(1, 'neck-width'), term(1, 'shoulder-width'), term(1, 'armhole-inset')]
      : [term(1, 'neck-width'), term(0.5, 'width', 'back'), term(-0.5, 'neck-width', 'back')],
  };
}
