import { type Decisions, isDropped } from './decisions.ts';
import type { SeamEdges } from './messages/check-codes.ts';
import type { Rules } from './rules.ts';
import { type Row, S } from './slots.ts';
import type { Steps } from './steps.ts';

/** A seam between two pieces made apart: where the lengths of its edges are in a row, and which those are. */
interface MadeSeam {
  readonly a: number;
  readonly b: number;
  readonly edges: SeamEdges;
}

/** All of them: back and front at their widths, armholes and sides; armhole and sleeve. */
function madeSeams(d: Decisions): readonly MadeSeam[] {
  const { made } = d;
  const seams: MadeSeam[] = [];
  const add = (a: number, b: number, edges: SeamEdges): void => void seams.push({ a, b, edges });
  if (made.back && made.front) add(S.madeBack, S.madeFront, 'widths');
  if (made.armhole && made.sleeveTop && isDropped(d)) add(S.armholeRound, S.sleeveTop, 'armhole-and-top');
  if (made.armhole && made.cap) add(S.armholeSeam, S.capSeam, 'armhole-and-cap');
  if (made.armhole && made.sleeveRaglan) add(S.raglanEdge, S.raglanSleeveEdge, 'raglan-edges');
  if (made.frontArmhole) add(S.madeArmhole, S.madeFrontArmhole, 'armholes');
  if (made.frontToUnderarm) add(S.madeBodyToUnderarm, S.madeFrontToUnderarm, 'sides');
  return seams;
}

/** Whether two pieces that were made meet in a seam. */
export const seamsCompare = (d: Decisions): boolean => madeSeams(d).length > 0;

/** Which seam of some is worst off, counted from the first; by how much its edges differ, and by how much they may, mm. */
interface Worst {
  readonly at: number;
  readonly differ: number;
  readonly may: number;
}

/** `edges` are the lengths of both edges of the first seam, then of the next; what is past the last of `count` seams is not read. */
function worstOf(count: number, edges: readonly number[], rules: Rules): Worst {
  let worst: Worst = { at: 0, differ: 0, may: Infinity };
  for (let at = 0; at < count; at++) {
    const [a, b] = [edges[2 * at]!, edges[2 * at + 1]!];
    const may = Math.max(rules['seam-difference-most'], rules['seam-difference-share'] * Math.max(a, b));
    const one = { at, differ: Math.abs(a - b), may };
    if (!(one.may - one.differ >= worst.may - worst.differ)) worst = one;
  }
  return worst;
}

/** What the edges of the seam that is worst off differ by, and may. */
export function seamSteps(steps: Steps, d: Decisions): void {
  const seams = madeSeams(d);
  if (seams.some(({ a }) => a === S.armholeRound)) steps.sum(S.armholeRound, [2, S.armhole]);
  const edges = seams.flatMap(({ a, b }) => [a, b]);
  steps.solved(S.seamNeed, (...lengths) => worstOf(seams.length, lengths, d.rules).differ, ...edges);
  steps.solved(S.seamHave, (...lengths) => worstOf(seams.length, lengths, d.rules).may, ...edges);
}

/** The edges of the seam that is worst off. */
export function worstEdges(v: Row, d: Decisions): SeamEdges {
  const seams = madeSeams(d);
  const lengths = seams.flatMap(({ a, b }) => [v[a]!, v[b]!]);
  return seams[worstOf(seams.length, lengths, d.rules).at]!.edges;
}
