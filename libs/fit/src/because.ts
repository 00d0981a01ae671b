import type { Because } from './advice.ts';
import { SPENT } from './check-rules.ts';
import type { Nudging } from './nudging.ts';
import type { Decisions } from './decisions.ts';
import { NONE } from './messages/none.ts';
import type { Source } from './messages/source-codes.ts';
import type { InputTerm, SolvedCode, TermCodes } from './messages/term-codes.ts';
import { keepsBack, keepsFront, keepsWidth, keptByShoulders } from './neck.ts';
import { type Row, S } from './slots.ts';

/** A term while it is made: rounding is added to the last. */
type Growing = Pick<Because, 'code' | 'params' | 'u' | 'from'> & { value: number };

/** A slope as it is told: to three decimals. */
const shareOf = (slope: number): number => Math.round(slope * 1000) / 1000;

const MODEL: Source = { code: 'model', params: NONE };
const SOLVED: Source = { code: 'solved', params: NONE };

/**
 * Why a number is what it is: one term per independent input, adding up to it in value and in u². Every input is a
 * length, so doubling them all doubles every length that follows, and slope × input sums to the number (Euler's
 * theorem on homogeneous functions). What is left is rounding, or a limit that the model keeps.
 * A number that is solved for, and not added up, is one term. `u` is the number's own uncertainty.
 */
export function because(slot: number, u: number, nudging: Nudging, d: Decisions): Because[] {
  const value = nudging.base[slot]!;
  const solved = solvedAs(slot, nudging.base, d);
  if (solved !== null) return [{ code: solved, params: NONE, value, u, from: SOLVED }];
  const terms: Growing[] = [];
  const thickness = nudging.slope(slot, S.thickness);
  const ordinary = nudging.slope(slot, S.ordinaryThickness);
  // The fabric's two coefficients are one term; where the new fabric drops out, the ordinary one stands alone.
  const merged = thickness !== 0 && ordinary !== 0;
  let rest = value;
  const { inputs, places } = nudging.moversOf(slot);
  for (let i = 0; i < inputs.length; i++) {
    const input = nudging.told(inputs[i]!);
    const slope = nudging.rate(places[i]!);
    if (!input || slope === 0 || (merged && input.slot === S.ordinaryThickness)) continue;
    const share = Math.abs(slope) * input.u;
    const alone = slope * input.value;
    if (merged && input.slot === S.thickness) {
      const usual = nudging.base[S.ordinaryThickness]!;
      const part = alone + ordinary * usual;
      terms.push({
        code: 'fabric-beside-ordinary',
        params: { compared: comparedFabric(slope, ordinary, input.value, usual) },
        value: part,
        u: share,
        from: {
          code: 'fabric-beside-ordinary',
          params: { share: shareOf(slope), ordinaryShare: shareOf(ordinary), fabric: input.from },
        },
      });
      rest -= part;
    } else {
      const { code } = input.term;
      const params = paramsWith(input.term, shareOf(slope));
      terms.push({ code, params, value: alone, u: share, from: input.from });
      rest -= alone;
    }
  }
  return withRest(terms, rest);
}

/** The parameters of an input as one term of a sum. Written out where they are many: spreading them took half of the time of an advice. */
function paramsWith({ code, params }: InputTerm, share: number): Because['params'] {
  if (params === NONE) return { share };
  switch (code) {
    case 'body-measure':
    case 'garment-measure':
      return { dimension: params.dimension, share } as Because['params'];
    case 'ease':
      return { category: params.category, share };
    default:
      return { ...params, share } as Because['params'];
  }
}

/** Which fabric is the thicker decides, unless the two enter by different shares. */
function comparedFabric(
  slope: number,
  ordinarySlope: number,
  thickness: number,
  usual: number,
): TermCodes['fabric-beside-ordinary']['compared'] {
  if (shareOf(slope) !== -shareOf(ordinarySlope)) return 'apart';
  if (thickness === usual) return 'alike';
  return thickness < usual ? 'thinner' : 'thicker';
}

/** Rounding goes to the last term; more than that is a limit, said as a term of its own. */
function withRest(terms: Growing[], rest: number): Because[] {
  const last = terms[terms.length - 1];
  if (last && Math.abs(rest) <= 1e-4) last.value += rest;
  else if (rest !== 0) terms.push({ code: 'limit', params: NONE, value: rest, u: 0, from: MODEL });
  return terms as Because[];
}

/** How far a neck was made larger; null where its rules' size passes. */
function widened(v: Row): SolvedCode | null {
  if (!(v[S.neckScale]! > 1)) return null;
  return v[S.headHave]! < v[S.headNeed]! - SPENT ? 'widened-to-limit' : 'widened-for-head';
}

/** What a number is that is solved for; null for one that is added up. */
function solvedAs(slot: number, v: Row, d: Decisions): SolvedCode | null {
  const sleeveSolved = d.construction === 'set-in' || d.construction === 'raglan';
  const seamFixesBody = d.made.cap || d.made.sleeveRaglan;
  const lengthFollows = seamFixesBody && d.made.bodyToUnderarm ? 'made-body-and-armhole-of-made-sleeve' : null;
  switch (slot) {
    case S.neckOpening:
      return 'finished-neck-edge';
    case S.neckEdge:
      return 'piece-neck-edge';
    case S.cap:
    case S.sleeveRaglan:
      return d.made.cap || d.made.sleeveRaglan ? null : 'solved-from-seam';
    case S.underarmSeam:
      return sleeveSolved ? 'sleeve-below-seam' : null;
    case S.armhole:
    case S.raglan:
    case S.pieceArmhole:
    case S.pieceRaglan:
      return seamFixesBody ? 'solved-from-made-sleeve' : null;
    case S.bodyToUnderarm:
    case S.pieceBodyToUnderarm:
      return seamFixesBody && !d.made.bodyToUnderarm ? 'length-less-armhole-of-made-sleeve' : null;
    case S.length:
    case S.shoulderToHem:
    case S.pieceLength:
      return lengthFollows;
    case S.pieceFrontNeck:
      if (d.neckline === 'v') return 'from-v-point';
      return keepsFront(d) ? null : widened(v);
    case S.raglanFrontNeck:
      return d.neckline === 'v' ? 'from-v-point' : null;
    case S.shoulderWidth:
    case S.pieceShoulderWidth:
    case S.backShoulder:
    case S.frontShoulder:
      return keepsWidth(d) || widened(v) === null ? null : 'left-by-widened-neck';
    case S.frontEdge:
      return d.neckline === 'v' ? 'from-v-point' : lengthFollows;
    case S.neckWidth:
    case S.pieceNeckWidth:
      if (keepsWidth(d)) return null;
      return keptByShoulders(v) && widened(v) !== null ? 'kept-to-shoulders' : widened(v);
    case S.frontNeck:
      return keepsFront(d) ? null : widened(v);
    case S.backNeck:
    case S.pieceBackNeck:
      return keepsBack(d) ? null : widened(v);
    default:
      return null;
  }
}
