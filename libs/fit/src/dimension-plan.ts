import type { DimensionName, PieceName } from './advice.ts';
import type { Decisions } from './decisions.ts';
import { S } from './slots.ts';

/** How far a driver may be rounded before any check draws it in: the ease band, a rule's share of it, or the rule's length. */
export type Range = 'band' | 'upper-arm-ease' | 'wrist-ease' | 'length';

/** A number that can be rounded, and the range it starts from. What is derived from it is rounded with it. */
export interface Driver {
  readonly slot: number;
  readonly range: Range;
}

/** One dimension of a sheet: where its number is, and what drives it. */
export interface Planned {
  readonly name: DimensionName;
  readonly slot: number;
  readonly driver: Driver;
}

/** One of a piece: its axis and fabric, and how many of its ends are joined to something (each takes a seam allowance). */
export interface PlannedOnPiece extends Planned {
  readonly axis: 'across' | 'along';
  readonly fabric: 'main' | 'rib';
  readonly joinedEnds: 0 | 1 | 2;
}

export interface PlannedPiece {
  readonly piece: PieceName;
  readonly make: number;
  readonly workedFrom: 'hem' | 'cuff' | 'edge';
  readonly dimensions: readonly PlannedOnPiece[];
}

const length = (slot: number): Driver => ({ slot, range: 'length' });

/** What drives what, in this design. */
function driversOf(d: Decisions): Record<'chest' | 'hem' | 'width' | 'armhole' | 'sleeveTop' | 'cuff', Driver> {
  const chest: Driver = { slot: S.mid, range: 'band' };
  const armhole = length(d.construction === 'raglan' ? S.raglan : S.armhole);
  const dropped = d.construction === 'drop-shoulder' || d.construction === 'squared-drop';
  return {
    chest,
    hem: isTapered(d) ? { slot: S.hemFlat, range: 'band' } : chest,
    width: d.construction === 'drop-shoulder' ? chest : length(S.width),
    armhole,
    sleeveTop: dropped ? armhole : { slot: S.sleeveGirth, range: 'upper-arm-ease' },
    cuff: { slot: S.cuff, range: 'wrist-ease' },
  };
}

/** All dimensions of a sheet. */
export interface Plan {
  readonly assembled: readonly Planned[];
  readonly pieces: readonly PlannedPiece[];
  /** Places of the numbers that drive any, each once. */
  readonly drivers: readonly number[];
  /** Each number once, as it is told first. */
  readonly numbers: readonly Planned[];
  /** Every name once, with the place where its number is told first. */
  readonly names: readonly Pick<Planned, 'name' | 'slot'>[];
}

/** One plan for each kind of design, made when it is first asked for. */
const PLANS = new Map<string, Plan>();

/** What a sheet of this design tells. */
export function planOf(d: Decisions): Plan {
  const kind = [d.silhouette, d.construction, isTapered(d), isApart(d)].join(' ');
  const before = PLANS.get(kind);
  if (before) return before;
  const assembled = assembledPlan(d);
  const pieces = piecePlans(d);
  const planned: readonly Planned[] = [...assembled, ...pieces.flatMap(({ dimensions }) => dimensions)];
  const plan = {
    assembled,
    pieces,
    drivers: [...new Set(planned.map(({ driver }) => driver.slot))],
    numbers: planned.filter(({ slot }, at) => planned.findIndex((each) => each.slot === slot) === at),
    names: planned.filter(({ name }, at) => planned.findIndex((each) => each.name === name) === at),
  };
  PLANS.set(kind, plan);
  return plan;
}

/** Back and front were made, each as wide as it came out. */
const isApart = ({ made }: Decisions): boolean => made.back && made.front;

const isTapered = (d: Decisions): boolean => d.hem === 'tapered' && d.hipReached;

/** The dimensions of the assembled garment, in the order in which they are told. */
function assembledPlan(d: Decisions): Planned[] {
  const drive = driversOf(d);
  const raglan = d.construction === 'raglan';
  const plan: Planned[] = [];
  const add = (name: DimensionName, slot: number, driver: Driver = length(slot)): void => {
    plan.push({ name, slot, driver });
  };
  add('chest-width', S.chestWidth, drive.chest);
  add('hem-width', S.hemWidth, drive.hem);
  if (!raglan) add('cross-back-width', S.width, drive.width);
  add('centre-back-length', S.length);
  add('shoulder-to-hem', S.shoulderToHem, length(S.length));
  add('body-to-underarm', S.bodyToUnderarm, length(S.length));
  if (raglan) add('raglan-depth', S.raglan);
  else add('armhole-depth', S.armhole);
  if (d.construction === 'set-in') add('shoulder-fall', S.shoulderFall);
  add('neck-width', S.neckWidth);
  add('front-neck-depth', S.frontNeck);
  add('back-neck-depth', S.backNeck);
  add('neck-opening', S.neckOpening);
  if (d.silhouette !== 'vest') {
    add('neck-to-cuff', S.reachedNapeToCuff, length(S.napeToCuff));
    add('sleeve-length', S.sleeve);
    add(
      'underarm-seam',
      S.underarmSeam,
      d.construction === 'drop-shoulder' ? length(S.sleeve) : length(S.underarmSeam),
    );
    add('sleeve-top-width', S.sleeveTopFlat, drive.sleeveTop);
    add('cuff-width', S.cuffFlat, drive.cuff);
  }
  add('band-depth', S.band);
  if (d.silhouette === 'cardigan') add('band-overlap', S.overlap);
  add('rib-depth', S.rib);
  return plan;
}

/** The pieces to make, each with its dimensions. */
function piecePlans(d: Decisions): PlannedPiece[] {
  const fronts: PlannedPiece[] =
    d.silhouette === 'cardigan' ? [bodyPiece('left-front', d), bodyPiece('right-front', d)] : [bodyPiece('front', d)];
  return [
    bodyPiece('back', d),
    ...fronts,
    ...(d.silhouette === 'vest' ? [] : [sleevePiece(d)]),
    ...(d.silhouette === 'cardigan' ? [frontBandPiece()] : []),
    neckBandPiece(),
  ];
}

type Adding = (
  name: DimensionName,
  slot: number,
  axis: 'across' | 'along',
  joinedEnds: 0 | 1 | 2,
  driver?: Driver,
  fabric?: 'main' | 'rib',
) => void;

function collecting(): { readonly dimensions: PlannedOnPiece[]; readonly add: Adding } {
  const dimensions: PlannedOnPiece[] = [];
  const add: Adding = (name, slot, axis, joinedEnds, driver = length(slot), fabric = 'main') => {
    dimensions.push({ name, slot, axis, fabric, joinedEnds, driver });
  };
  return { dimensions, add };
}

function bodyPiece(piece: 'back' | 'front' | 'left-front' | 'right-front', d: Decisions): PlannedPiece {
  const drive = driversOf(d);
  const { dimensions, add } = collecting();
  const raglan = d.construction === 'raglan';
  const half = piece.endsWith('-front');
  const front = piece !== 'back';
  // A front with a band is joined at its side; its other edge carries the band.
  const sides = half ? 1 : 2;
  const panel = half ? S.frontPanel : piece === 'back' ? S.backPanel : S.frontWholePanel;
  add('width', panel, 'across', sides, drive.chest);
  add('hem-width', half ? S.frontHem : piece === 'back' ? S.backHem : S.frontWholeHem, 'across', sides, drive.hem);
  if (!raglan && !half) add('cross-back-width', front ? S.frontWidth : S.backWidth, 'across', sides, drive.width);
  if (!raglan) add('shoulder-to-hem', S.shoulderToHem, 'along', 1, length(S.length));
  add('centre-back-length', S.pieceLength, 'along', 1, length(S.length));
  add('body-to-underarm', S.pieceBodyToUnderarm, 'along', 0, length(S.length));
  if (raglan) {
    add('raglan-depth', S.pieceRaglan, 'along', 1, drive.armhole);
    add('raglan-bind-off', S.pieceBindOff, 'across', 1, length(S.bindOff));
  } else {
    add('armhole-depth', S.pieceArmhole, 'along', 1, drive.armhole);
    add('armhole-inset', S.pieceInset, 'across', 0, length(S.inset));
    if (d.construction === 'set-in') {
      add('underarm-bind-off', S.pieceBindOff, 'across', 0, length(S.bindOff));
      add('shoulder-fall', S.shoulderFall, 'along', 0);
    }
    add('shoulder-width', isApart(d) ? (front ? S.frontShoulder : S.backShoulder) : S.pieceShoulderWidth, 'across', 1);
  }
  const neckWidth = half ? S.frontHalfNeck : raglan ? S.raglanNeck : S.pieceNeckWidth;
  add('neck-width', neckWidth, 'across', 0, length(S.neckWidth));
  if (front) add('front-neck-depth', raglan ? S.raglanFrontNeck : S.pieceFrontNeck, 'along', 0, length(S.frontNeck));
  else if (!raglan) add('back-neck-depth', S.pieceBackNeck, 'along', 0, length(S.backNeck));
  if (half) add('front-edge', S.frontEdge, 'along', 0);
  add('rib-depth', S.rib, 'along', 0, length(S.rib), 'rib');
  // Front and half-front pieces have no centre back.
  const own = front && !raglan ? dimensions.filter(({ name }) => name !== 'centre-back-length') : dimensions;
  return { piece, make: 1, workedFrom: 'hem', dimensions: own };
}

function sleevePiece(d: Decisions): PlannedPiece {
  const drive = driversOf(d);
  const { dimensions, add } = collecting();
  add('sleeve-top-width', S.sleeveTop, 'across', 2, drive.sleeveTop);
  add('cuff-width', S.cuff, 'across', 2, drive.cuff, 'rib');
  add('sleeve-length', S.sleeve, 'along', 1);
  add('underarm-seam', S.underarmSeam, 'along', 0, d.construction === 'drop-shoulder' ? length(S.sleeve) : undefined);
  if (d.construction === 'squared-drop') add('armhole-inset', S.inset, 'along', 0);
  if (d.construction === 'set-in') {
    add('cap-height', S.cap, 'along', 1);
    add('cap-top-width', S.capTop, 'across', 0);
    add('underarm-bind-off', S.bindOff, 'across', 0);
  }
  if (d.construction === 'raglan') {
    add('sleeve-raglan-depth', S.sleeveRaglan, 'along', 1);
    add('cap-top-width', S.capTop, 'across', 0);
    add('raglan-bind-off', S.bindOff, 'across', 1);
  }
  add('rib-depth', S.rib, 'along', 0, length(S.rib), 'rib');
  return { piece: 'sleeve', make: 2, workedFrom: 'cuff', dimensions };
}

function frontBandPiece(): PlannedPiece {
  const { dimensions, add } = collecting();
  add('front-edge', S.frontEdge, 'across', 0, length(S.frontEdge), 'rib');
  add('band-depth', S.frontBand, 'along', 1, length(S.frontBand), 'rib');
  add('band-overlap', S.overlap, 'along', 0, length(S.overlap), 'rib');
  return { piece: 'front-band', make: 2, workedFrom: 'edge', dimensions };
}

function neckBandPiece(): PlannedPiece {
  const { dimensions, add } = collecting();
  add('neck-edge', S.neckEdge, 'across', 0, length(S.neckEdge), 'rib');
  add('band-depth', S.band, 'along', 1, length(S.band), 'rib');
  return { piece: 'neck-band', make: 1, workedFrom: 'edge', dimensions };
}
