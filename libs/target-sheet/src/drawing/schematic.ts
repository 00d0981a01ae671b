import type { Piece, PieceDimension } from '../sheet-parts.ts';
import { inUnit } from '../in-unit.ts';
import type { TargetSheet } from '../target-sheet.ts';
import { printed } from '../text/printed.ts';
import { asDrawn, drawPiece, isBand, type DrawnPiece } from './draw-piece.ts';
import { flow, type PlacedPiece } from './flow.ts';
import { lengthLabel } from './label.ts';
import { boxOf, type Box } from './plane.ts';

/** A sheet's pieces drawn to one scale and laid out in rows; in drawing units (CSS pixels at full size), y down. */
export interface Schematic {
  /** The sheet's title. */
  readonly title: string;
  /** Every piece with its dimensions, in words. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
  /** Drawing units a millimetre of the garment. */
  readonly scale: number;
  /** A line on how to read it, to set at its top. */
  readonly legend: string;
  readonly pieces: readonly PlacedPiece[];
}

/** Narrowest drawing that can be read; a narrower wish is drawn so wide. */
const NARROWEST = 280;
const DEFAULT_WIDTH = 960;
/** The tallest piece, in drawing units. */
const TALLEST = 300;
export const MARGIN = 12;
const LEGEND = 24;

/** Lays a sheet's pieces out in a drawing so wide (drawing units, at least 280), with their measures. */
export function schematic(given: TargetSheet, options: { readonly width?: number | undefined } = {}): Schematic {
  const width = Math.max(options.width ?? DEFAULT_WIDTH, NARROWEST);
  const sheet = inUnit(given, 'mm');
  const unit = given.unit === 'in' ? 'in' : 'cm';
  const { scale, drawn } = drawToFit(sheet, scaleFor(sheet.pieces), width - 2 * MARGIN, unit);
  const cells = drawn.map(({ piece, one }) => ({ drawn: one, words: [caption(piece), ...unplaced(piece, one, unit)] }));
  const { pieces, height } = flow(cells, { width, margin: MARGIN, top: MARGIN + LEGEND });
  return {
    title: sheet.title || printed('untitled', {}),
    description: drawn.map((one) => described(one, unit)).join(' '),
    width,
    height: height + MARGIN,
    scale,
    legend: printed('drawing-legend', { tape: unit }),
    pieces,
  };
}

/** The scale at which every piece is as tall as the tallest may be, the bands apart; without a piece to draw, one to one. */
function scaleFor(pieces: readonly Piece[]): number {
  const heights = (of: readonly Piece[]): number[] =>
    of.flatMap((piece) => (piece.outline ? [heightOf(boxOf(asDrawn(piece, piece.outline)))] : []));
  const others = heights(pieces.filter((piece) => !isBand(piece)));
  const shown = others.length > 0 ? others : heights(pieces);
  return shown.length === 0 ? 1 : TALLEST / Math.max(...shown);
}

interface Drawing {
  readonly scale: number;
  readonly drawn: readonly { readonly piece: Piece; readonly one: DrawnPiece }[];
}

/** Draws at a scale, or at the smaller one at which each piece fits with its dimension lines. */
function drawToFit(sheet: TargetSheet, scale: number, room: number, unit: 'cm' | 'in', tries = 3): Drawing {
  const { pieces, design } = sheet;
  const drawn = pieces.map((piece) => ({ piece, one: drawPiece(piece, design.opening, scale, unit) }));
  const fitting = drawn.flatMap(({ one: { frame, outline } }) => {
    if (outline.length === 0) return [];
    const own = widthOf(boxOf(outline));
    const lines = frame.right - frame.left - own;
    return [(scale * (room - lines)) / own];
  });
  const smaller = Math.min(scale, ...fitting);
  return smaller < scale && tries > 0 ? drawToFit(sheet, smaller, room, unit, tries - 1) : { scale, drawn };
}

const widthOf = ({ left, right }: Box): number => right - left;
const heightOf = ({ bottom, top }: Box): number => top - bottom;

const pieceName = (piece: string): string => (piece.charAt(0).toUpperCase() + piece.slice(1)).replaceAll('-', ' ');

function caption({ piece, make, mirrored }: Piece): string {
  return `${pieceName(piece)}, make ${make}${mirrored > 0 ? ` (${mirrored} mirrored)` : ''}`;
}

const inWords = ({ name, value }: PieceDimension, unit: 'cm' | 'in'): string =>
  `${name.replaceAll('-', ' ')} ${value === null ? 'no advice' : lengthLabel(value, unit)}`;

const unplaced = (piece: Piece, drawn: DrawnPiece, unit: 'cm' | 'in'): string[] =>
  piece.dimensions.filter(({ name }) => drawn.unplaced.includes(name)).map((dimension) => inWords(dimension, unit));

function described({ piece, one }: Drawing['drawn'][number], unit: 'cm' | 'in'): string {
  const dimensions = piece.dimensions.map(
    (dimension) => `${inWords(dimension, unit)}${dimension.value === null ? '' : ` ${unit}`}`,
  );
  const opens = one.openings.flatMap(({ label }) => (label === null ? [] : [`${label} ${unit}`]));
  return `${caption(piece)}: ${[...dimensions, ...opens].join(', ')}.`;
}
