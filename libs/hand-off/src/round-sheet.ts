import { roundTo } from '#measure';
import type { TargetSheet } from '#target-sheet';
import { asMadeSlope, groupEqual, type Quantity, type TakenDimension } from './quantity.ts';
import { roundToStep, tidy } from './round-to-step.ts';
import { isOnPiece, withDimensions, type PlacedDimension, type SheetDimension } from './sheet-dimension.ts';

/** What rounding did to a quantity, in the sheet's unit of its value as worn. */
interface Move {
  /** How far it moved with others, before it was rounded itself. */
  readonly shift: number;
  /** How far it was then rounded. */
  readonly rounded: number;
  readonly within: boolean;
}

export interface RoundedSheet {
  /** The sheet with the taken dimensions rounded. Their `because` no longer adds up, so it is no sheet to keep. */
  readonly sheet: TargetSheet;
  /** Those whose rounded value leaves low…high. */
  readonly outside: readonly PlacedDimension[];
}

/**
 * Rounds the dimensions that a planner takes to whole multiples of `step` (> 0, in the sheet's unit), each within its
 * low…high where a multiple lies there.
 *
 * What a rounded dimension lists in `follows` moves with it first and is then rounded in its turn, its low…high moving
 * along: a drop shoulder that came out 4 mm wider has its sleeve's length rounded from 2 mm less. Only the rounding of
 * a dimension moves its followers, for `follows` lists all that moves. Pieces speak for followers where the planner
 * takes both pieces and assembled widths, and of pieces that share a name (back and front) the first, so that nothing
 * moves twice. Equal lengths of one name are one length and stay equal.
 */
export function roundSheet(sheet: TargetSheet, step: number, taken: readonly TakenDimension[]): RoundedSheet {
  const quantities = groupEqual(taken);
  const moves = new Map<Quantity, Move>();
  for (const quantity of quantities) move(quantity, quantities, step, moves, new Set());
  const made = new Map<SheetDimension, { by: TakenDimension['by']; move: Move }>();
  for (const [{ members }, done] of moves) {
    for (const { dimension, by } of members) made.set(dimension, { by, move: done });
  }
  return {
    sheet: withDimensions(sheet, (dimension) => {
      const own = made.get(dimension);
      return own ? moved(dimension, own.by, own.move, step) : dimension;
    }),
    outside: taken.filter(({ dimension }) => made.get(dimension)?.move.within === false),
  };
}

/** Rounds one quantity after those it follows; a circle of followers is cut where it closes. */
function move(
  quantity: Quantity,
  all: readonly Quantity[],
  step: number,
  moves: Map<Quantity, Move>,
  underWay: ReadonlySet<Quantity>,
): Move {
  const done = moves.get(quantity);
  if (done) return done;
  const circle = new Set([...underWay, quantity]);
  const shift = leadersOf(quantity, all)
    .filter(({ leader }) => !circle.has(leader))
    .reduce((sum, { leader, share }) => sum + share * move(leader, all, step, moves, circle).rounded, 0);
  const start = quantity.start + shift * quantity.slope;
  const limits = {
    low: quantity.limits.low + shift * quantity.slope,
    high: quantity.limits.high + shift * quantity.slope,
  };
  const stepped = roundToStep(start, step, limits);
  const made = { shift, rounded: (stepped.value - start) / quantity.slope, within: stepped.within };
  moves.set(quantity, made);
  return made;
}

/** The quantities whose rounding moves this one, and by how much a millimetre: one a name, pieces before assembled. */
function leadersOf(quantity: Quantity, all: readonly Quantity[]): { leader: Quantity; share: number }[] {
  const candidates = all.flatMap((leader) =>
    leader.members.flatMap(({ place, dimension }) => {
      const share = dimension.follows?.[quantity.name];
      return share === undefined || leader === quantity ? [] : [{ leader, share, onPiece: place !== 'assembled' }];
    }),
  );
  const onPieces = candidates.filter(({ onPiece }) => onPiece);
  const ofName = new Map<string, { leader: Quantity; share: number }>();
  for (const each of onPieces.length > 0 ? onPieces : candidates) {
    if (!ofName.has(each.leader.name)) ofName.set(each.leader.name, each);
  }
  return [...ofName.values()];
}

/** A dimension after its move: the length the planner works from is the multiple itself, the other goes along. */
function moved<D extends SheetDimension>(
  dimension: D,
  by: TakenDimension['by'],
  { shift, rounded }: Move,
  step: number,
): D {
  const value = (dimension.value ?? 0) + shift + rounded;
  return {
    ...dimension,
    value: by === 'value' ? roundTo(value, step) : tidy(value),
    ...(dimension.low === undefined ? {} : { low: dimension.low + shift }),
    ...(dimension.high === undefined ? {} : { high: dimension.high + shift }),
    ...(isOnPiece(dimension) && dimension.asMade !== null
      ? { asMade: roundTo(dimension.asMade + (shift + rounded) * asMadeSlope(dimension), step) }
      : {}),
  };
}
