import type { Quantity } from '#measure';
import type { DimensionName, PieceName } from './advice.ts';
import { CONSTRUCTIONS } from './constructions/index.ts';
import type { GarmentModel } from './model/garment-model.ts';
import { INPUTS } from './model/inputs.ts';
import {
  across,
  along,
  byItself,
  type Planned,
  type PlannedOnPiece,
  type PlannedPiece,
  type Rounded,
} from './model/planned.ts';

const { band, frontBand, overlap, rib } = INPUTS;

/** The dimensions of the assembled garment, in the order in which a sheet gives them. */
export function assembledDimensions(m: GarmentModel): Planned[] {
  const { choices, girths, lengths, widths, neck, armhole, body, sleeve, rounded } = m;
  const dimension = (name: DimensionName, quantity: Quantity, by: Rounded = byItself(quantity)): Planned => ({
    name,
    quantity,
    rounded: by,
  });
  const { between } = widths;
  return [
    dimension('chest-width', girths.chestWidth, rounded.chest),
    dimension('hem-width', girths.hemWidth, rounded.hem),
    ...(between ? [dimension('cross-back-width', between, rounded.width!)] : []),
    dimension('centre-back-length', body.length, rounded.length),
    dimension('shoulder-to-hem', body.shoulderToHem, rounded.length),
    dimension('body-to-underarm', body.toUnderarm, rounded.length),
    dimension(between ? 'armhole-depth' : 'raglan-depth', armhole.depth, rounded.armhole),
    ...(body.shoulderFall ? [dimension('shoulder-fall', body.shoulderFall)] : []),
    dimension('neck-width', neck.width, rounded.neckWidth),
    dimension('front-neck-depth', neck.front),
    dimension('back-neck-depth', neck.back),
    dimension('neck-opening', neck.opening),
    ...(sleeve
      ? [
          dimension('neck-to-cuff', sleeve.reached, byItself(lengths.napeToCuff)),
          dimension('sleeve-length', sleeve.length, rounded.sleeve!.length),
          dimension('underarm-seam', sleeve.underarmSeam, rounded.sleeve!.underarmSeam),
          dimension('sleeve-top-width', sleeve.topFlat, rounded.sleeveTop),
          dimension('cuff-width', sleeve.cuffFlat, rounded.sleeve!.cuff),
        ]
      : []),
    dimension('band-depth', band),
    ...(choices.silhouette === 'cardigan' ? [dimension('band-overlap', overlap)] : []),
    dimension('rib-depth', rib),
  ];
}

/** The pieces to make, each with its dimensions. */
export function pieces(m: GarmentModel): PlannedPiece[] {
  const cardigan = m.choices.silhouette === 'cardigan';
  return [
    bodyPiece('back', m),
    ...(cardigan ? [bodyPiece('left-front', m), bodyPiece('right-front', m)] : [bodyPiece('front', m)]),
    ...(m.sleeve ? [sleevePiece(m)] : []),
    ...(cardigan ? [frontBandPiece(m)] : []),
    neckBandPiece(m),
  ];
}

function bodyPiece(piece: PieceName, m: GarmentModel): PlannedPiece {
  const { girths, armhole, neck, body, rounded, choices } = m;
  const construction = CONSTRUCTIONS[choices.construction];
  const half = piece.endsWith('-front') ? body.half : null;
  const front = piece !== 'back';
  const { shoulders } = body;
  // A front with a band is joined at its side; its other edge carries the band.
  const sides = half ? 1 : 2;
  const panel = half?.panel ?? (front ? girths.frontPanel : girths.backPanel);
  const hem = half?.hem ?? (front ? girths.frontHem : girths.backHem);
  return {
    piece,
    make: 1,
    workedFrom: 'hem',
    dimensions: [
      across('width', panel, sides, rounded.chest),
      across('hem-width', hem, sides, rounded.hem),
      ...(shoulders && !half
        ? [across('cross-back-width', front ? shoulders.frontWidth : shoulders.backWidth, sides, rounded.width!)]
        : []),
      ...(shoulders ? [along('shoulder-to-hem', body.shoulderToHem, 1, rounded.length)] : []),
      // A front with shoulders has no centre back.
      ...(front && shoulders ? [] : [along('centre-back-length', body.pieceLength, 1, rounded.length)]),
      along('body-to-underarm', body.pieceToUnderarm, 0, rounded.length),
      ...construction.bodyDimensions(m, front),
      across('neck-width', half?.neck ?? armhole.pieceNeck.width, 0, rounded.neckWidth),
      ...(front ? [along('front-neck-depth', armhole.pieceNeck.front, 0, byItself(neck.front))] : []),
      ...(!front && shoulders ? [along('back-neck-depth', armhole.pieceNeck.back, 0, byItself(neck.back))] : []),
      ...(half ? [along('front-edge', half.edge, 0)] : []),
      along('rib-depth', rib, 0, byItself(rib), 'rib'),
    ],
  };
}

function sleevePiece(m: GarmentModel): PlannedPiece {
  const sleeve = m.sleeve!;
  const rounded = m.rounded.sleeve!;
  const dimensions: PlannedOnPiece[] = [
    across('sleeve-top-width', sleeve.top, 2, m.rounded.sleeveTop),
    across('cuff-width', sleeve.cuff, 2, rounded.cuff, 'rib'),
    along('sleeve-length', sleeve.length, 1, rounded.length),
    along('underarm-seam', sleeve.underarmSeam, 0, rounded.underarmSeam),
    ...CONSTRUCTIONS[m.choices.construction].sleeveDimensions(m),
    along('rib-depth', rib, 0, byItself(rib), 'rib'),
  ];
  return { piece: 'sleeve', make: 2, workedFrom: 'cuff', dimensions };
}

function frontBandPiece({ body }: GarmentModel): PlannedPiece {
  const { edge } = body.half!;
  const dimensions = [
    across('front-edge', edge, 0, byItself(edge), 'rib'),
    along('band-depth', frontBand, 1, byItself(frontBand), 'rib'),
    along('band-overlap', overlap, 0, byItself(overlap), 'rib'),
  ];
  return { piece: 'front-band', make: 2, workedFrom: 'edge', dimensions };
}

function neckBandPiece({ neck }: GarmentModel): PlannedPiece {
  const dimensions = [
    across('neck-edge', neck.edge, 0, byItself(neck.edge), 'rib'),
    along('band-depth', band, 1, byItself(band), 'rib'),
  ];
  return { piece: 'neck-band', make: 1, workedFrom: 'edge', dimensions };
}
