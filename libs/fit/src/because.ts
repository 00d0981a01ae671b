import type { Because } from './advice.ts';
import type { Nudging } from './nudging.ts';
import type { Decisions } from './decisions.ts';
import { S } from './slots.ts';

const PORTIONS: Readonly<Record<string, string>> = {
  '1': '',
  '0.5': 'half of ',
  '0.25': 'a quarter of ',
  '2': 'twice ',
};

/** "half of chest girth", "less a quarter of ease, classic", "0.35 × ease, classic". */
function termOf(slope: number, label: string): string {
  const size = Math.abs(slope);
  const portion = PORTIONS[String(size)] ?? `${Number(size.toFixed(3))} × `;
  return `${slope < 0 ? 'less ' : ''}${portion}${label}`;
}

/**
 * Why a number is what it is: one term per independent input, adding up to it in value and in u². Every input is a
 * length, so doubling them all doubles every length that follows, and slope × input sums to the number (Euler's
 * theorem on homogeneous functions). What is left is rounding, or a limit that the model keeps.
 * A number that is solved for, and not added up, is one term.
 */
export function because(slot: number, nudging: Nudging, d: Decisions): Because[] {
  const value = nudging.base[slot]!;
  const solved = solvedAs(slot, nudging.base, d);
  if (solved !== null)
    return [{ term: solved, value, u: nudging.uncertainty(slot), from: 'solved, u by central differences' }];
  const terms: Because[] = [];
  let rest = value;
  let ordinary = 0;
  let ordinarySlope = 0;
  for (const { input, value: x, slopes } of nudging.columns) {
    if (input.slot === S.ordinaryThickness) {
      ordinarySlope = slopes[slot]!;
      ordinary = ordinarySlope * x;
    }
  }
  for (const { input, value: x, slopes } of nudging.columns) {
    const slope = slopes[slot]!;
    if (slope === 0 || input.slot === S.ordinaryThickness) continue;
    const u = Math.abs(slope) * input.u;
    if (input.slot === S.thickness && ordinarySlope !== 0) {
      const together = slope * x + ordinary;
      const term = together < 0 ? 'thinner fabric than ordinary' : 'thicker fabric than ordinary';
      terms.push({ term, value: together, u, from: fabricFrom(slope, ordinarySlope, input.from) });
      rest -= together;
      ordinary = 0;
      ordinarySlope = 0;
      continue;
    }
    const portion = slope * x;
    if (portion === 0 && u === 0) continue;
    terms.push({ term: termOf(slope, input.label), value: portion, u, from: input.from });
    rest -= portion;
  }
  return withRest(terms, rest);
}

function fabricFrom(slope: number, ordinarySlope: number, from: string): string {
  const times = (x: number): string => String(Number(Math.abs(x).toFixed(3)));
  const formula = slope === -ordinarySlope ? `${times(slope)}(t − t₀)` : `${times(slope)}t − ${times(ordinarySlope)}t₀`;
  return `${formula}, t ${from}, t₀ assumed`;
}

/** Rounding goes to the last term; more than that is a limit, said as a term of its own. */
function withRest(terms: Because[], rest: number): Because[] {
  const last = terms[terms.length - 1];
  if (!last || Math.abs(rest) > 1e-4) {
    if (rest !== 0) terms.push({ term: 'kept within its limits', value: rest, u: 0, from: 'the model' });
    return terms;
  }
  terms[terms.length - 1] = { ...last, value: last.value + rest };
  return terms;
}

/** The words for a number that is solved for; null for one that is added up. */
function solvedAs(slot: number, v: Float64Array, d: Decisions): string | null {
  const sleeveSolved = d.construction === 'set-in' || d.construction === 'raglan';
  const seamFixesBody = d.made.cap || d.made.sleeveRaglan;
  switch (slot) {
    case S.neckOpening:
      return 'length of the neck’s finished edge';
    case S.neckEdge:
      return 'length of the neck’s edge on the piece';
    case S.cap:
    case S.sleeveRaglan:
      return d.made.cap || d.made.sleeveRaglan ? null : 'solved from the seam';
    case S.underarmSeam:
      return sleeveSolved ? 'the sleeve below its seam with the body' : null;
    case S.armhole:
    case S.raglan:
    case S.pieceArmhole:
    case S.pieceRaglan:
      return seamFixesBody ? 'solved from the sleeve as made' : null;
    case S.bodyToUnderarm:
    case S.pieceBodyToUnderarm:
      return seamFixesBody ? 'length less the armhole that the sleeve as made needs' : null;
    case S.pieceFrontNeck:
    case S.frontEdge:
    case S.raglanFrontNeck:
      return d.neckline === 'v' ? 'from the V’s point under its band' : null;
    case S.neckWidth:
    case S.frontNeck:
    case S.backNeck:
    case S.pieceNeckWidth:
    case S.pieceBackNeck:
      return v[S.neckScale]! > 1 ? 'widened until the head passes' : null;
    default:
      return null;
  }
}
