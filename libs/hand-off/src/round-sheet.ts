import { roundTo } from '#measure';
import type { TargetSheet } from '#target-sheet';
import { ratesOf, type Rate } from './following.ts';
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

interface RoundedSheet {
  /** The sheet with the taken dimensions rounded. Their `because` no longer adds up, so it is no sheet to keep. */
  readonly sheet: TargetSheet;
  /** Those whose rounded value leaves low…high. */
  readonly outside: readonly PlacedDimension[];
}

/**
 * Rounds the dimensions that a planner takes to whole multiples of `step` (> 0, in the sheet's unit), each within its
 * low…high where a multiple lies there.
 *
 * What follows a rounded dimension moves with it first and is then rounded in its turn, its low…high moving along: a
 * drop shoulder that came out 4 mm wider has its sleeve's length rounded from 2 mm less. Dimensions that follow each
 * other (the width of back, front and chest) are one decision, and one of them makes it: a piece's before the assembled
 * garment's. Only what is rounded there moves others, so that nothing moves twice. Equal lengths of one name stay equal.
 */
export function roundSheet(sheet: TargetSheet, step: number, taken: readonly TakenDimension[]): RoundedSheet {
  const moves = moveAll(groupEqual(piecesFirst(taken)), ratesOf(sheet), step);
  const made = new Map<SheetDimension, { by: TakenDimension['by']; move: Move }>();
  for (const [{ members }, move] of moves) {
    for (const { dimension, by } of members) made.set(dimension, { by, move });
  }
  return {
    sheet: withDimensions(sheet, (dimension) => {
      const own = made.get(dimension);
      return own ? moved(dimension, own.by, own.move, step) : dimension;
    }),
    outside: taken.filter(({ dimension }) => made.get(dimension)?.move.within === false),
  };
}

const piecesFirst = (taken: readonly TakenDimension[]): TakenDimension[] => [
  ...taken.filter(({ place }) => place !== 'assembled'),
  ...taken.filter(({ place }) => place === 'assembled'),
];

function moveAll(quantities: readonly Quantity[], rate: Rate, step: number): Map<Quantity, Move> {
  const leads = (from: Quantity, to: Quantity): number => rate(from.dimension, to.dimension);
  const deciding = decisions(quantities, leads);
  const moves = new Map<Quantity, Move>();
  const move = (quantity: Quantity, underWay: ReadonlySet<Quantity>): Move => {
    const done = moves.get(quantity);
    if (done) return done;
    const circle = new Set([...underWay, quantity]);
    const shift = deciding
      .filter((leader) => !circle.has(leader) && leads(leader, quantity) !== 0)
      .reduce((sum, leader) => sum + leads(leader, quantity) * move(leader, circle).rounded, 0);
    const made = round(quantity, shift, step);
    moves.set(quantity, made);
    return made;
  };
  for (const quantity of quantities) move(quantity, new Set());
  return moves;
}

/** Of the quantities that follow each other, the first. */
function decisions(quantities: readonly Quantity[], leads: (from: Quantity, to: Quantity) => number): Quantity[] {
  const deciding: Quantity[] = [];
  for (const quantity of quantities) {
    const decided = deciding.some((other) => leads(other, quantity) !== 0 && leads(quantity, other) !== 0);
    if (!decided) deciding.push(quantity);
  }
  return deciding;
}

function round({ start, slope, limits }: Quantity, shift: number, step: number): Move {
  const along = shift * slope;
  const stepped = roundToStep(start + along, step, { low: limits.low + along, high: limits.high + along });
  return { shift, rounded: (stepped.value - start - along) / slope, within: stepped.within };
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
