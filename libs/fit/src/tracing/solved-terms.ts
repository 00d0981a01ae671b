import type { Quantity } from '#measure';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { keepsBack, keepsFront, keepsWidth } from '../model/neck.ts';
import type { SolvedCode } from '../messages/term-codes.ts';
import type { ValueOf } from '../model/path.ts';
import type { TracedCheck } from '../checks/check.ts';
import { marginOf } from '../checks/judge.ts';

/** What a number is that is solved for and not added up; null where it is added up after all. */
export type SolvedTerm = (v: ValueOf) => SolvedCode | null;

/** Whether the shoulders carry no neck as wide as its rules begin it. */
export const isKeptByShoulders = ({ neck }: GarmentModel, v: ValueOf): boolean =>
  v(neck.width) < v(neck.start.width) - 1e-9;

/** The quantities of a garment that are solved for. `head` is the check that the neck passes it. */
export function solvedTerms(m: GarmentModel, head: TracedCheck | null): ReadonlyMap<Quantity, SolvedTerm> {
  return new Map([...neckTerms(m, head), ...seamTerms(m)]);
}

function neckTerms(m: GarmentModel, head: TracedCheck | null): [Quantity, SolvedTerm][] {
  const { choices, neck, body, armhole } = m;
  // How a neck was made larger for the head; null where its rules' size passes.
  const widened: SolvedTerm = (v) => {
    if (!(v(neck.scale) > 1)) return null;
    return head !== null && marginOf(head, v) < 0 ? 'widened-to-limit' : 'widened-for-head';
  };
  const width: SolvedTerm = (v) => (widened(v) !== null && isKeptByShoulders(m, v) ? 'kept-to-shoulders' : widened(v));
  const besideNeck: SolvedTerm = (v) => (widened(v) === null ? null : 'left-by-widened-neck');
  const terms: [Quantity, SolvedTerm][] = [
    [neck.opening, () => 'finished-neck-edge'],
    [neck.edge, () => 'piece-neck-edge'],
  ];
  if (!keepsWidth(choices)) {
    terms.push([neck.width, width], [neck.piece.width, width]);
    const { shoulders } = body;
    if (shoulders)
      for (const each of [shoulders.width, shoulders.onPiece, shoulders.back, shoulders.front])
        terms.push([each, besideNeck]);
  }
  if (!keepsFront(choices)) terms.push([neck.front, widened], [neck.piece.front, widened]);
  if (!keepsBack(choices)) terms.push([neck.back, widened], [neck.piece.back, widened]);
  if (choices.neckline === 'v')
    for (const each of [neck.piece.front, armhole.pieceNeck.front, body.half?.edge])
      if (each) terms.push([each, () => 'from-v-point']);
  return terms;
}

function seamTerms({ choices, armhole, sleeve, body }: GarmentModel): [Quantity, SolvedTerm][] {
  const { made, neckline } = choices;
  const fromSleeve = made.cap || made.sleeveRaglan;
  const terms: [Quantity, SolvedTerm][] = [];
  const add = (code: SolvedCode, ...all: readonly Quantity[]): void =>
    all.forEach((each) => terms.push([each, () => code]));
  if (sleeve && CONSTRUCTIONS[choices.construction].sleeveTopIs === 'girth') {
    add('sleeve-below-seam', sleeve.underarmSeam);
    if (!fromSleeve) add('solved-from-seam', sleeve.above!);
  }
  if (!fromSleeve) return terms;
  add('solved-from-made-sleeve', armhole.depth, armhole.onPiece);
  if (!made.bodyToUnderarm) add('length-less-armhole-of-made-sleeve', body.toUnderarm, body.pieceToUnderarm);
  else {
    add('made-body-and-armhole-of-made-sleeve', body.length, body.shoulderToHem, body.pieceLength);
    if (body.half && neckline !== 'v') add('made-body-and-armhole-of-made-sleeve', body.half.edge);
  }
  return terms;
}
