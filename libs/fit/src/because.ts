import type { Because } from './advice.ts';
import type { Nudging } from './nudging.ts';
import type { Decisions } from './decisions.ts';
import { type Row, S } from './slots.ts';

/** A term while it is made. */
type Term = { -readonly [field in keyof Because]: Because[field] };

function portionOf(size: number): string {
  if (size === 1) return '';
  if (size === 0.5) return 'half of ';
  if (size === 0.25) return 'a quarter of ';
  return size === 2 ? 'twice ' : `${rounded(size)} × `;
}

/** Thousandths in figures: those that were asked for, for the next time. */
const FIGURES = new Map<number, string>();

/** A number without its sign, to the nearest thousandth, in figures. */
function rounded(x: number): string {
  const thousandths = Math.round(Math.abs(x) * 1000);
  const before = FIGURES.get(thousandths);
  if (before !== undefined) return before;
  const figures = String(thousandths / 1000);
  FIGURES.set(thousandths, figures);
  return figures;
}

/** "half of chest girth", "less a quarter of ease, classic", "0.35 × ease, classic". */
function termOf(slope: number, label: string): string {
  return slope < 0 ? `less ${portionOf(-slope)}${label}` : portionOf(slope) + label;
}

/**
 * Why a number is what it is: one term per independent input, adding up to it in value and in u². Every input is a
 * length, so doubling them all doubles every length that follows, and slope × input sums to the number (Euler's
 * theorem on homogeneous functions). What is left is rounding, or a limit that the model keeps.
 * A number that is solved for, and not added up, is one term. `u` is the number's own uncertainty.
 */
export function because(slot: number, u: number, nudging: Nudging, d: Decisions): Because[] {
  const value = nudging.base[slot]!;
  const solved = solvedAs(slot, nudging.base, d);
  if (solved !== null) return [{ term: solved, value, u, from: 'solved, u by central differences' }];
  const terms: Term[] = [];
  const thickness = nudging.slope(slot, S.thickness);
  const ordinary = nudging.slope(slot, S.ordinaryThickness);
  // The fabric's two coefficients are one term; where the new fabric drops out, the ordinary one stands alone.
  const merged = thickness !== 0 && ordinary !== 0;
  let rest = value;
  for (const place of nudging.inputsOf(slot)) {
    const input = nudging.told(place);
    const slope = nudging.slope(slot, place);
    if (!input || slope === 0 || (merged && input.slot === S.ordinaryThickness)) continue;
    const share = Math.abs(slope) * input.u;
    const alone = slope * input.value;
    if (merged && input.slot === S.thickness) {
      const part = alone + ordinary * nudging.base[S.ordinaryThickness]!;
      const term = part < 0 ? 'thinner fabric than ordinary' : 'thicker fabric than ordinary';
      terms.push({ term, value: part, u: share, from: fabricFrom(slope, ordinary, input.from) });
      rest -= part;
    } else {
      terms.push({ term: termOf(slope, input.label), value: alone, u: share, from: input.from });
      rest -= alone;
    }
  }
  return withRest(terms, rest);
}

function fabricFrom(slope: number, ordinarySlope: number, from: string): string {
  const formula =
    Math.abs(slope + ordinarySlope) < 1e-9
      ? `${rounded(slope)}(t − t₀)`
      : `${rounded(slope)}t − ${rounded(ordinarySlope)}t₀`;
  return `${formula}, t ${from}, t₀ assumed`;
}

/** Rounding goes to the last term; more than that is a limit, said as a term of its own. */
function withRest(terms: Term[], rest: number): Because[] {
  const last = terms[terms.length - 1];
  if (last && Math.abs(rest) <= 1e-4) last.value += rest;
  else if (rest !== 0) terms.push({ term: 'kept within its limits', value: rest, u: 0, from: 'the model' });
  return terms;
}

/** The words for a number that is solved for; null for one that is added up. */
function solvedAs(slot: number, v: Row, d: Decisions): string | null {
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
