import type { Edge, EdgeKind, EdgeName } from '../messages/advice.ts';
import { lengthOf, mirrored, type Path, withoutRepeats } from '../model/path.ts';

/** An edge as drawn, counter-clockwise, its ends included. */
export interface DrawnEdge {
  readonly edge: EdgeName;
  readonly path: Path;
  /** As sewn, mm, where that is not the length of the path. */
  readonly length?: number;
  readonly kind?: EdgeKind;
}

/** A piece drawn: closed, counter-clockwise, and its edges once round it. mm */
export interface Outline {
  readonly outline: Path;
  readonly edges: readonly Omit<Edge, 'joins'>[];
}

/** Closes edges that follow each other to an outline. Those of no length are left out. */
export function closed(drawn: readonly DrawnEdge[]): Outline {
  const outline: (readonly [number, number])[] = [];
  const edges: Omit<Edge, 'joins'>[] = [];
  for (const { edge, path, length, kind } of drawn) {
    const points = withoutRepeats(path);
    if (points.length < 2) continue;
    if (outline.length === 0) outline.push(points[0]!);
    const from = outline.length - 1;
    outline.push(...points.slice(1));
    edges.push({
      edge,
      from,
      to: outline.length - 1,
      kind: kind ?? kindOf(points),
      length: length ?? lengthOf(points),
    });
  }
  outline.pop();
  return { outline, edges: edges.map((edge) => (edge.to === outline.length ? { ...edge, to: 0 } : edge)) };
}

/** Less than this is no slant, mm. */
const LEVEL = 1e-9;

function kindOf(path: Path): EdgeKind {
  const along = (axis: 0 | 1): boolean => path.every((point) => Math.abs(point[axis] - path[0]![axis]) < LEVEL);
  if (along(0) || along(1)) return 'straight';
  return path.length === 2 ? 'slope' : 'curve';
}

/** The mirror image of edges about a vertical line, run through the other way; what was on the right is on the left, behind in front. */
export const mirroredEdges = (edges: readonly DrawnEdge[], about: number): DrawnEdge[] =>
  edges.map((each) => ({ ...each, edge: mirroredName(each.edge), path: mirrored(each.path, about) })).reverse();

const OTHER_SIDE: readonly (readonly [EdgeName, EdgeName])[] = [
  ['right-side', 'left-side'],
  ['right-underarm', 'left-underarm'],
  ['right-armhole', 'left-armhole'],
  ['right-raglan', 'left-raglan'],
  ['right-shoulder', 'left-shoulder'],
  ['right-seam', 'left-seam'],
  ['back-underarm', 'front-underarm'],
  ['back-armhole', 'front-armhole'],
  ['back-raglan', 'front-raglan'],
];

const mirroredName = (edge: EdgeName): EdgeName => OTHER_SIDE.find(([right]) => right === edge)?.[1] ?? edge;

/** The points of edges, as they follow each other. */
export const pathOf = (edges: readonly DrawnEdge[]): Path => edges.flatMap(({ path }) => path);
