import type { Piece } from '#target-sheet';

type Edge = Piece['edges'][number];
type Join = Edge['joins'][number];

/** What two ways to one length may differ by, mm. */
const NEAR = 1e-6;
const near = (one: number, other: number): boolean => Math.abs(one - other) <= NEAR;

/** By how much the chords of a curve may be shorter than the curve. */
const CHORDS = 0.005;

/**
 * The edges of a piece go once round its outline from its first point, each name once, as long as drawn; their joins are told on both pieces.
 * Joined edges are equally long; those of a neck band, or where the check of seams speaks of made pieces, may say the ease between.
 */
export function edgeLaws(piece: Piece, all: readonly Piece[], seamIsChecked: boolean): string[] {
  const { edges, outline } = piece;
  if (!outline) return edges.map(({ edge }) => `has no outline, and a ${edge}`);
  return [
    ...round(edges, outline.length),
    ...edges.flatMap((edge) => [
      ...lengthOf(piece, outline, edge),
      ...edge.joins.flatMap((join) => answered(piece, edge, join, all, seamIsChecked)),
      ...sums(piece, edge, all),
    ]),
  ];
}

function round(edges: readonly Edge[], corners: number): string[] {
  const names = edges.map(({ edge }) => edge);
  const gap = edges.findIndex(({ from }, index) => from !== (index === 0 ? 0 : edges[index - 1]?.to));
  return [
    ...(new Set(names).size === names.length ? [] : [`has an edge twice: ${names.join(', ')}`]),
    ...(gap === -1 ? [] : [`its edges leave a gap before ${names[gap]}`]),
    ...(edges.at(-1)?.to === 0 ? [] : ['its edges do not end where they began']),
    ...(edges.slice(0, -1).every(({ from, to }) => from < to && to < corners) ? [] : ['its edges do not go round']),
  ];
}

/** A seam leaves out what a sleeve steps out above its rib. */
function lengthOf(
  { regions }: Piece,
  outline: NonNullable<Piece['outline']>,
  { edge, from, to, kind, length }: Edge,
): string[] {
  const last = to === 0 ? outline.length : to;
  const step = edge.endsWith('-seam') ? regions[0]?.to : undefined;
  let drawn = 0;
  for (let index = from; index < last; index += 1) {
    const [[x1, y1], [x2, y2]] = [outline[index]!, outline[(index + 1) % outline.length]!];
    if (step === undefined || !near(y1, step) || !near(y2, step)) drawn += Math.hypot(x2 - x1, y2 - y1);
  }
  const asDrawn = kind === 'curve' ? Math.abs(length - drawn) <= CHORDS * drawn : near(length, drawn);
  return asDrawn ? [] : [`${edge} is ${length} long, and drawn ${drawn}`];
}

const edgeOf = (all: readonly Piece[], { piece, edge }: Pick<Join, 'piece' | 'edge'>): Edge | undefined =>
  all.find((each) => each.piece === piece)?.edges.find((each) => each.edge === edge);

function answered(
  { piece }: Piece,
  { edge }: Edge,
  join: Join,
  all: readonly Piece[],
  seamIsChecked: boolean,
): string[] {
  const name = `${edge} joined to ${join.edge} of ${join.piece}`;
  const back = edgeOf(all, join)?.joins.filter(
    (each) => each.piece === piece && each.edge === edge && each.mirrored === join.mirrored,
  );
  if (back?.length !== 1) return [`${name}, which does not say so`];
  const [answer] = back;
  const laws =
    answer!.open === join.open && near(answer!.ease ?? 0, -(join.ease ?? 0)) ? [] : [`${name}, which says otherwise`];
  const eased = join.ease !== undefined && !seamIsChecked && piece !== 'neck-band' && join.piece !== 'neck-band';
  return eased ? [...laws, `${name} with an ease of ${join.ease}`] : laws;
}

/** The joins of each copy add up to its edge; one of those that lie along a longer edge has its own share there. */
function sums(piece: Piece, edge: Edge, all: readonly Piece[]): string[] {
  const copies = piece.mirrored > 0 ? [undefined, 1] : [null];
  return copies.flatMap((copy) => {
    const joins = edge.joins.filter(({ mirrored }) => copy === null || mirrored === copy);
    const alone = joins.length === 1 && isOneOfSeveral(joins[0]!, all);
    // Where another piece has no shape, what is joined is not all there.
    if (joins.length === 0 || alone || all.some(({ outline }) => !outline)) return [];
    const sum = joins.reduce((total, join) => total + (edgeOf(all, join)?.length ?? NaN) + (join.ease ?? 0), 0);
    return near(sum, edge.length) ? [] : [`${edge.edge} is ${edge.length} long, and what it is joined to ${sum}`];
  });
}

function isOneOfSeveral(join: Join, all: readonly Piece[]): boolean {
  const other = all.find((each) => each.piece === join.piece);
  const beside = edgeOf(all, join)?.joins.filter(({ mirrored }) => other?.mirrored === 0 || mirrored === join.mirrored);
  return (beside?.length ?? 0) > 1;
}
