import { FULL_WIDTHS } from './names.ts';
import type { Node } from './node.ts';
import type { System } from './system.ts';

/** Counts that must be chosen together: unknowns that make one dimension, or widths that lie on one middle line. */
export interface Component {
  readonly unknowns: readonly number[];
  readonly nodes: readonly Node[];
  /** Widths whose counts are all odd or all even, so that what lies beside them is the same on both sides. */
  readonly onMiddle: readonly (readonly Node[])[];
}

/** Parts a system into what can be chosen apart. `symmetric`: the pieces that have a middle line. */
export function componentsOf(system: System, symmetric: ReadonlySet<string>): Component[] {
  const parent = system.unknowns.map((_, index) => index);
  const rootOf = (index: number): number => (parent[index] === index ? index : rootOf(parent[index]!));
  const unite = (indices: readonly number[]): void => {
    for (const index of indices) parent[rootOf(index)] = rootOf(indices[0]!);
  };
  const unknownsIn = (nodes: readonly Node[]): number[] =>
    nodes.flatMap(({ key }) => [...system.forms.get(key)!.keys()]);
  const groups = middleLines(system, symmetric);
  for (const node of system.nodes.values()) unite(unknownsIn([node]));
  for (const group of groups) unite(unknownsIn(group));
  const byRoot = new Map<number, { unknowns: number[]; nodes: Node[]; onMiddle: Node[][] }>();
  for (const [index] of parent.entries()) {
    const root = rootOf(index);
    if (!byRoot.has(root)) byRoot.set(root, { unknowns: [], nodes: [], onMiddle: [] });
    byRoot.get(root)!.unknowns.push(index);
  }
  const componentOf = (node: Node) => byRoot.get(rootOf([...system.forms.get(node.key)!.keys()][0] ?? -1));
  for (const node of system.nodes.values()) componentOf(node)?.nodes.push(node);
  for (const group of groups) componentOf(group[0]!)?.onMiddle.push(group);
  return [...byRoot.values()];
}

function middleLines({ nodes }: System, symmetric: ReadonlySet<string>): Node[][] {
  const groups = new Map<string, Node[]>();
  for (const node of nodes.values()) {
    const onMiddle = FULL_WIDTHS.has(node.dimension.name) && node.unit === 'across main' && symmetric.has(node.piece);
    if (!onMiddle) continue;
    const group = groups.get(node.piece);
    if (group) group.push(node);
    else groups.set(node.piece, [node]);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}
