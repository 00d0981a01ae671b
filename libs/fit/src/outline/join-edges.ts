import type { Edge, Join, PieceName } from '../messages/advice.ts';
import type { PlannedPiece } from '../model/planned.ts';
import type { Outline } from './drawn-edge.ts';
import type { Seam } from './seams.ts';

/** Less than this is no ease, mm. */
const NO_EASE = 1e-6;

type Unjoined = Outline['edges'][number];
type End = 0 | 1;
const otherEnd = (end: End): End => (end === 0 ? 1 : 0);

/** The edges of pieces with their joins; a seam of an edge that is not there is left out. `planned`: all pieces, those without a shape too. */
export function joinEdges(
  drawn: ReadonlyMap<PieceName, Outline>,
  seams: readonly Seam[],
  planned: readonly Pick<PlannedPiece, 'piece' | 'mirrored'>[],
): ReadonlyMap<PieceName, readonly Edge[]> {
  const edgeAt = (seam: Seam, end: End): Unjoined | undefined => {
    const [piece, name] = seam.between[end];
    return drawn.get(piece)?.edges.find(({ edge }) => edge === name);
  };
  const copied = new Set(planned.filter(({ mirrored }) => mirrored > 0).map(({ piece }) => piece));
  const shapeless = new Set(planned.map(({ piece }) => piece).filter((piece) => !drawn.has(piece)));
  const sewn = seams.filter((seam) => edgeAt(seam, 0) && edgeAt(seam, 1));

  /** The seams of one edge of one copy. */
  const besides = (seam: Seam, end: End): readonly Seam[] => {
    const [piece] = seam.between[end];
    const edge = edgeAt(seam, end);
    return seams.filter(
      (each) =>
        (edgeAt(each, 0) === edge || edgeAt(each, 1) === edge) &&
        (!copied.has(piece) || (each.mirrored ?? 0) === (seam.mirrored ?? 0)),
    );
  };

  /** What an edge that is joined to several has left over is shared among them by their lengths; not known where one has no shape. */
  const easeOf = (seam: Seam, end: End): number => {
    const [own, other] = [edgeAt(seam, end)!, edgeAt(seam, otherEnd(end))!];
    const all = besides(seam, end);
    if (all.some(({ between }) => between.some(([piece]) => shapeless.has(piece)))) return 0;
    const there = all.filter((each) => sewn.includes(each));
    if (there.length < 2) return own.length - other.length;
    const lengths = there.map((each) => (edgeAt(each, 0) === own ? edgeAt(each, 1) : edgeAt(each, 0))!.length);
    const sum = lengths.reduce((total, length) => total + length, 0);
    return ((own.length - sum) * other.length) / sum;
  };

  const joinFrom = (seam: Seam, end: End): Join => {
    const other = otherEnd(end);
    const [piece, edge] = seam.between[other];
    const ease = besides(seam, other).length > 1 ? -easeOf(seam, other) : easeOf(seam, end);
    return {
      piece,
      edge,
      ...(seam.mirrored && { mirrored: seam.mirrored }),
      ...(seam.open && { open: seam.open }),
      ...(Math.abs(ease) > NO_EASE && { ease }),
    };
  };

  return new Map(
    Array.from(drawn, ([piece, { edges }]) => [
      piece,
      edges.map((edge) => ({
        ...edge,
        joins: sewn.flatMap((seam) =>
          ([0, 1] as const).flatMap((end) => (edgeAt(seam, end) === edge ? [joinFrom(seam, end)] : [])),
        ),
      })),
    ]),
  );
}
