import { times, type Quantity } from '#measure';
import type { ASSEMBLED_NAMES } from '../messages/advice.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { INPUTS } from '../model/inputs.ts';
import { backPiece, frontPiece, halfFrontPiece } from './body-pieces.ts';
import {
  across,
  along,
  byItself,
  derived,
  equalTo,
  term,
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
    backPiece(m),
    ...(cardigan ? [halfFrontPiece('left-front', m), halfFrontPiece('right-front', m)] : [frontPiece(m)]),
    ...(m.sleeve ? [sleevePiece(m)] : []),
    ...(cardigan ? [frontBandPiece(m)] : []),
    // A band of no depth is no piece.
    ...(m.choices.bandless ? [] : [neckBandPiece(m), ...(m.sleeve ? [] : [armholeBandPiece(m)])]),
  ];
}

function sleevePiece(m: GarmentModel): PlannedPiece {
  const sleeve = m.sleeve!;
  const rounded = m.rounded.sleeve!;
  const top = across('sleeve-top-width', sleeve.top, 2, m.rounded.sleeveTop);
  const above = CONSTRUCTIONS[m.choices.construction].sleeveDimensions(m);
  const dimensions: PlannedOnPiece[] = [
    sleeve.topIs === 'seam' ? equalTo(top, term(2, 'armhole-depth', 'back')) : top,
    across('cuff-width', sleeve.cuff, 2, rounded.cuff, 'rib'),
    across('above-rib-width', sleeve.aboveRib, 2),
    along('sleeve-length', sleeve.length, 1, rounded.length),
    equalTo(
      along('underarm-seam', sleeve.underarmSeam, 0, rounded.underarmSeam),
      term(1, 'sleeve-length'),
      // What rises above the underarm comes first.
      ...above.slice(0, 1).map(({ name }) => term(-1, name)),
    ),
    ...above,
    equalTo(along('rib-depth', m.body.rib, 0, byItself(m.body.rib), 'rib'), term(1, 'rib-depth', 'back')),
  ];
  return { piece: 'sleeve', make: 2, mirrored: 1, workedFrom: 'cuff', dimensions };
}

function frontBandPiece({ body }: GarmentModel): PlannedPiece {
  const { edge } = body.half!;
  const dimensions = [
    equalTo(across('front-edge', edge, 0, byItself(edge), 'rib'), term(1, 'front-edge', 'left-front')),
    along('band-depth', frontBand, 1, byItself(frontBand), 'rib'),
    along('band-overlap', overlap, 0, byItself(overlap), 'rib'),
  ];
  return { piece: 'front-band', make: 2, mirrored: 1, workedFrom: 'edge', dimensions };
}

function neckBandPiece({ neck, rounded }: GarmentModel): PlannedPiece {
  const dimensions = [
    derived(across('neck-edge', neck.edge, 0, byItself(neck.edge), 'rib')),
    along('band-depth', neck.band, 1, rounded.band, 'rib'),
  ];
  return { piece: 'neck-band', make: 1, mirrored: 0, workedFrom: 'edge', dimensions };
}

/** A vest's, along both halves of an armhole. */
function armholeBandPiece({ armhole, neck, rounded }: GarmentModel): PlannedPiece {
  const edge = times(2, armhole.pieceEdge);
  const dimensions = [
    derived(across('armhole-edge', edge, 0, byItself(edge), 'rib')),
    equalTo(along('band-depth', neck.band, 1, rounded.band, 'rib'), term(1, 'band-depth', 'neck-band')),
  ];
  return { piece: 'armhole-band', make: 2, mirrored: 1, workedFrom: 'edge', dimensions };
}
