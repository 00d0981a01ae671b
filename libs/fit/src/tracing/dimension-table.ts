import { times, type Quantity } from '#measure';
import type { ASSEMBLED_NAMES, PieceName } from '../messages/advice.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { INPUTS } from '../model/inputs.ts';
import {
  across,
  along,
  byItself,
  derived,
  type Planned,
  type PlannedOnPiece,
  type PlannedPiece,
  type Rounded,
} from '../model/planned.ts';

const { frontBand, overlap } = INPUTS;

type AssembledName = (typeof ASSEMBLED_NAMES)[number];
/** A dimension of the assembled garment, and what is rounded with it if not itself; null where this garment has none. */
type Assembled = readonly [quantity: Quantity, rounded?: Rounded] | null;

/** Dimensions of the assembled garment that are formulas of the others. */
const DERIVED: ReadonlySet<string> = new Set<AssembledName>(['neck-opening', 'neck-to-cuff']);

/** The dimensions of the assembled garment, in the order in which a sheet gives them. */
export function assembledDimensions(m: GarmentModel): Planned[] {
  return Object.entries(assembledByName(m)).flatMap(([name, found]) => {
    if (found === null) return [];
    const [quantity, rounded = byItself(quantity)] = found;
    return [{ name: name as AssembledName, quantity, rounded, derived: DERIVED.has(name) }];
  });
}

function assembledByName(m: GarmentModel): Readonly<Record<AssembledName, Assembled>> {
  const { choices, girths, widths, neck, armhole, body, opening, sleeve, rounded } = m;
  const { between } = widths;
  const ofSleeve = (of: (made: NonNullable<typeof sleeve>, by: NonNullable<typeof rounded.sleeve>) => Assembled) =>
    sleeve ? of(sleeve, rounded.sleeve!) : null;
  return {
    'chest-width': [girths.chestWidth, rounded.chest],
    'hem-width': [girths.hemWidth, rounded.hem],
    'cross-back-width': between && [between, rounded.width!],
    'centre-back-length': [body.length, rounded.length],
    'shoulder-to-hem': [body.shoulderToHem, rounded.length],
    'body-to-underarm': [body.toUnderarm, rounded.length],
    'armhole-depth': between && [armhole.depth, rounded.armhole],
    'raglan-depth': between ? null : [armhole.depth, rounded.armhole],
    // Told of the pieces alone.
    'shoulder-width': null,
    'shoulder-fall': body.shoulderFall && [body.shoulderFall],
    'neck-width': [neck.width, rounded.neckWidth],
    'front-neck-depth': [neck.front],
    'back-neck-depth': [neck.back],
    'neck-opening': [neck.opening],
    'opening-length': opening && [opening.length],
    'neck-to-cuff': ofSleeve(({ reached }) => [reached]),
    'sleeve-length': ofSleeve(({ length }, by) => [length, by.length]),
    'underarm-seam': ofSleeve(({ underarmSeam }, by) => [underarmSeam, by.underarmSeam]),
    'sleeve-top-width': ofSleeve(({ topFlat }) => [topFlat, rounded.sleeveTop]),
    'cuff-width': ofSleeve(({ cuffFlat }, by) => [cuffFlat, by.cuff]),
    'band-depth': [neck.band, rounded.band],
    'band-overlap': choices.silhouette === 'cardigan' ? [overlap] : null,
    'rib-depth': [body.rib],
  };
}

/** The pieces to make, each with its dimensions. */
export function pieces(m: GarmentModel): PlannedPiece[] {
  const cardigan = m.choices.silhouette === 'cardigan';
  return [
    bodyPiece('back', m),
    ...(cardigan ? [bodyPiece('left-front', m), bodyPiece('right-front', m)] : [bodyPiece('front', m)]),
    ...(m.sleeve ? [sleevePiece(m)] : []),
    ...(cardigan ? [frontBandPiece(m)] : []),
    // A band of no depth is no piece.
    ...(m.choices.bandless ? [] : [neckBandPiece(m), ...(m.sleeve ? [] : [armholeBandPiece(m)])]),
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
      along('rib-depth', body.rib, 0, byItself(body.rib), 'rib'),
    ],
  };
}

function sleevePiece(m: GarmentModel): PlannedPiece {
  const sleeve = m.sleeve!;
  const rounded = m.rounded.sleeve!;
  const dimensions: PlannedOnPiece[] = [
    across('sleeve-top-width', sleeve.top, 2, m.rounded.sleeveTop),
    across('cuff-width', sleeve.cuff, 2, rounded.cuff, 'rib'),
    across('above-rib-width', sleeve.aboveRib, 2),
    along('sleeve-length', sleeve.length, 1, rounded.length),
    along('underarm-seam', sleeve.underarmSeam, 0, rounded.underarmSeam),
    ...CONSTRUCTIONS[m.choices.construction].sleeveDimensions(m),
    along('rib-depth', m.body.rib, 0, byItself(m.body.rib), 'rib'),
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

function neckBandPiece({ neck, rounded }: GarmentModel): PlannedPiece {
  const dimensions = [
    derived(across('neck-edge', neck.edge, 0, byItself(neck.edge), 'rib')),
    along('band-depth', neck.band, 1, rounded.band, 'rib'),
  ];
  return { piece: 'neck-band', make: 1, workedFrom: 'edge', dimensions };
}

/** A vest's, along both halves of an armhole. */
function armholeBandPiece({ armhole, neck, rounded }: GarmentModel): PlannedPiece {
  const edge = times(2, armhole.pieceEdge);
  const dimensions = [
    derived(across('armhole-edge', edge, 0, byItself(edge), 'rib')),
    along('band-depth', neck.band, 1, rounded.band, 'rib'),
  ];
  return { piece: 'armhole-band', make: 2, workedFrom: 'edge', dimensions };
}
