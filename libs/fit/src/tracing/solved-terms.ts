import type { Quantity } from '#measure';
import type { GarmentModel } from '../model/garment-model.ts';
import { keepsBack, keepsFront, keepsWidth } from '../model/neck.ts';
import type { SolvedCode } from '../messages/term-codes.ts';
import type { ValueOf } from '../model/path.ts';

/** What a number is that is solved for and not added up; null where it is added up after all. */
export type SolvedTerm = (v: ValueOf) => SolvedCode | null;

/** Whether a neck grew less wide than deep for the head, so that its shoulders stay. */
export const isKeptByShoulders = ({ neck }: GarmentModel, v: ValueOf): boolean =>
  v(neck.width) < v(neck.start.width) * v(neck.scale) - 1e-9;

/** What stays when another number of the sheet is rounded: it was widened, deepened or solved for, and is not solved again. */
export const solvedIn = ({ neck, armhole, body, opening, sleeve }: GarmentModel): readonly Quantity[] => [
  neck.band,
  neck.width,
  neck.front,
  neck.back,
  armhole.depth,
  body.rib,
  ...(opening ? [opening.length] : []),
  ...(sleeve?.topIs === 'girth' ? [sleeve.above!] : []),
];

/** The quantities of a garment that are solved for. */
export function solvedTerms(m: GarmentModel): ReadonlyMap<Quantity, SolvedTerm> {
  return new Map([...neckTerms(m), ...seamTerms(m)]);
}

function neckTerms(m: GarmentModel): [Quantity, SolvedTerm][] {
  const { choices, neck, body, armhole, opening } = m;
  // How a neck was made larger for the head; null where its rules' size passes.
  const widened: SolvedTerm = (v) => {
    if (!(v(neck.scale) > 1)) return null;
    return choices.neckScale === 'opened' ? 'widened-beside-opening' : 'widened-for-head';
  };
  const width: SolvedTerm = (v) => (widened(v) !== null && isKeptByShoulders(m, v) ? 'kept-to-shoulders' : widened(v));
  const besideNeck: SolvedTerm = (v) => (widened(v) === null ? null : 'left-by-widened-neck');
  const terms: [Quantity, SolvedTerm][] = [
    [neck.opening, () => 'finished-neck-edge'],
    [neck.edge, () => 'piece-neck-edge'],
  ];
  if (opening && choices.opening.how !== 'own') terms.push([opening.length, () => 'opening-for-head']);
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
  const { ruledDepth } = armhole;
  const terms: [Quantity, SolvedTerm][] = [];
  const add = (code: SolvedCode, ...all: readonly Quantity[]): void =>
    all.forEach((each) => terms.push([each, () => code]));
  if (ruledDepth) {
    const deepened: SolvedTerm = (v) => (v(armhole.depth) > v(ruledDepth) + 1e-9 ? 'deepened-for-arm' : null);
    terms.push([armhole.depth, deepened], [armhole.onPiece, deepened]);
  }
  if (sleeve?.topIs === 'girth') {
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
