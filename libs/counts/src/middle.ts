import type { CountablePiece } from './countable-sheet.ts';

/** The line from which the widths of a piece are counted, and whether the piece lies on both its sides. */
interface Middle {
  readonly at: number;
  readonly symmetric: boolean;
}

/** A front in half is counted from the edge that carries its band; every other piece from the middle of its lower edge. */
export function middleOf({ outline, edges }: CountablePiece): Middle {
  const front = edges.find(({ edge }) => edge === 'front-edge');
  if (front) return { at: outline?.[front.from]?.[0] ?? 0, symmetric: false };
  return { at: ((outline?.[0]?.[0] ?? 0) + (outline?.[1]?.[0] ?? 0)) / 2, symmetric: true };
}
