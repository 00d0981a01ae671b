import type { DrawnPiece } from './draw-piece.ts';
import { TEXT_SIZE, textWidth } from './label.ts';
import type { Point } from './plane.ts';

/** A line of words under a piece, in the piece's own coordinates, starting at `at`; the first is its caption. */
export interface Words {
  readonly text: string;
  readonly at: Point;
}

/** A piece in its place: what is drawn of it is moved by `at`. */
export interface PlacedPiece extends DrawnPiece {
  readonly at: Point;
  readonly words: readonly Words[];
}

interface Cell {
  readonly drawn: DrawnPiece;
  /** Caption first. */
  readonly words: readonly string[];
}

const GAP = 24;
const LINE = 16;

/** Sets cells side by side in rows no wider than the drawing, lower edges level, words below. */
export function flow(
  cells: readonly Cell[],
  page: { readonly width: number; readonly margin: number; readonly top: number },
): { pieces: PlacedPiece[]; height: number } {
  const pieces: PlacedPiece[] = [];
  let top = page.top;
  for (const row of rowsOf(cells, page.width - 2 * page.margin)) {
    const base = top - Math.min(...row.map(({ drawn }) => drawn.frame.top));
    const below = Math.max(...row.map(({ drawn }) => drawn.frame.bottom));
    let x = page.margin;
    for (const cell of row) {
      const { left } = cell.drawn.frame;
      const lines = linesOf(cell);
      const words = lines.map((text, index): Words => ({ text, at: [left, below + LINE * (index + 1)] }));
      pieces.push({ ...cell.drawn, at: [x - left, base], words });
      x += widthOf(cell) + GAP;
    }
    top = base + below + LINE * Math.max(...row.map((cell) => linesOf(cell).length)) + GAP;
  }
  return { pieces, height: top - GAP };
}

function rowsOf(cells: readonly Cell[], room: number): Cell[][] {
  const rows: Cell[][] = [];
  let used = Infinity;
  for (const cell of cells) {
    const needed = widthOf(cell);
    if (used + GAP + needed > room) {
      rows.push([]);
      used = -GAP;
    }
    rows.at(-1)?.push(cell);
    used += GAP + needed;
  }
  return rows;
}

const drawnWidth = ({ drawn: { frame } }: Cell): number => frame.right - frame.left;
const widthOf = (cell: Cell): number => Math.max(drawnWidth(cell), ...linesOf(cell).map((line) => textWidth(line)));

/** Narrowest column of words. */
const COLUMN = 150;

/** Caption, then the rest with commas, in lines no wider than the drawing or a column of words. */
function linesOf(cell: Cell): string[] {
  const [caption = '', ...rest] = cell.words;
  const room = Math.max(drawnWidth(cell), COLUMN);
  const lines: string[] = [];
  for (const [index, words] of rest.entries()) {
    const part = index < rest.length - 1 ? `${words},` : words;
    const joined = `${lines.at(-1) ?? ''} ${part}`.trim();
    if (lines.length > 0 && textWidth(joined, TEXT_SIZE) <= room) lines[lines.length - 1] = joined;
    else lines.push(part);
  }
  return [caption, ...lines];
}
