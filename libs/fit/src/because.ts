import type { Because } from './advice.ts';
import { SPENT } from './check-rules.ts';
import type { Nudging } from './nudging.ts';
import type { Decisions } from './decisions.ts';
import { keepsBack, keepsFront, keepsWidth, keptByShoulders } from './neck.ts';
import type { Movers } from './model.ts';
import { type Row, S } from './slots.ts';

/** A term while it is made. */
type Term = { -readonly [field in keyof Because]: Because[field] };

const thousandthsOf = (slope: number): number => Math.round(slope * 1000);

/** A number of thousandths without its sign, in figures. */
const figures = (thousandths: number): string => String(Math.abs(thousandths) / 1000);

/** The same before a letter, where a one is not written. */
const coefficient = (thousandths: number): string => (Math.abs(thousandths) === 1000 ? '' : figures(thousandths));

function portionOf(thousandths: number): string {
  switch (Math.abs(thousandths)) {
    case 1000:
      return '';
    case 500:
      return 'half of ';
    case 250:
      return 'a quarter of ';
    case 2000:
      return 'twice ';
    default:
      return `${figures(thousandths)} × `;
  }
}

/** The text that was said of the i-th mover for the same words and numbers before, or what `make` gives for them. */
function saidOf(
  { said }: Movers,
  i: number,
  about: string,
  first: number,
  second: number,
  make: (about: string, first: number, second: number) => string,
): string {
  const before = said[i];
  if (before?.about === about && before.first === first && before.second === second) return before.text;
  const text = make(about, first, second);
  said[i] = { about, first, second, text };
  return text;
}

/** "half of chest girth", "less a quarter of ease, classic", "0.35 × ease, classic". */
const termOf = (label: string, thousandths: number): string =>
  `${thousandths < 0 ? 'less ' : ''}${portionOf(thousandths)}${label}`;

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
  const movers = nudging.moversOf(slot);
  const { inputs, places } = movers;
  for (let i = 0; i < inputs.length; i++) {
    const input = nudging.told(inputs[i]!);
    const slope = nudging.rate(places[i]!);
    if (!input || slope === 0 || (merged && input.slot === S.ordinaryThickness)) continue;
    const share = Math.abs(slope) * input.u;
    const alone = slope * input.value;
    if (merged && input.slot === S.thickness) {
      const usual = nudging.base[S.ordinaryThickness]!;
      const part = alone + ordinary * usual;
      const from = saidOf(movers, i, input.from, thousandthsOf(slope), thousandthsOf(ordinary), fabricFrom);
      terms.push({ term: fabricTerm(slope, ordinary, input.value, usual), value: part, u: share, from });
      rest -= part;
    } else {
      const term = saidOf(movers, i, input.label, thousandthsOf(slope), 0, termOf);
      terms.push({ term, value: alone, u: share, from: input.from });
      rest -= alone;
    }
  }
  return withRest(terms, rest);
}

/** Which fabric is the thicker decides, unless the two enter by different shares. */
function fabricTerm(slope: number, ordinarySlope: number, thickness: number, usual: number): string {
  if (thousandthsOf(slope) !== -thousandthsOf(ordinarySlope)) return 'fabric’s thickness beside an ordinary one’s';
  if (thickness === usual) return 'fabric as thick as ordinary';
  return thickness < usual ? 'thinner fabric than ordinary' : 'thicker fabric than ordinary';
}

/** "2(t − t₀), t measured, t₀ assumed", "−1.571t + 2t₀, …" */
function fabricFrom(from: string, mine: number, ordinary: number): string {
  const sign = mine < 0 ? '−' : '';
  const rest = mine === -ordinary ? '(t − t₀)' : `t ${ordinary < 0 ? '−' : '+'} ${coefficient(ordinary)}t₀`;
  return `${sign}${coefficient(mine)}${rest}, t ${from}, t₀ assumed`;
}

/** Rounding goes to the last term; more than that is a limit, said as a term of its own. */
function withRest(terms: Term[], rest: number): Because[] {
  const last = terms[terms.length - 1];
  if (last && Math.abs(rest) <= 1e-4) last.value += rest;
  else if (rest !== 0) terms.push({ term: 'kept within its limits', value: rest, u: 0, from: 'the model' });
  return terms;
}

/** How far a neck was made larger; null where its rules' size passes. */
function widened(v: Row): string | null {
  if (!(v[S.neckScale]! > 1)) return null;
  return v[S.headHave]! < v[S.headNeed]! - SPENT ? 'widened as far as it may be' : 'widened until the head passes';
}

/** The words for a number that is solved for; null for one that is added up. */
function solvedAs(slot: number, v: Row, d: Decisions): string | null {
  const sleeveSolved = d.construction === 'set-in' || d.construction === 'raglan';
  const seamFixesBody = d.made.cap || d.made.sleeveRaglan;
  const lengthFollows =
    seamFixesBody && d.made.bodyToUnderarm ? 'the body as made, and the armhole that the sleeve as made needs' : null;
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
      return seamFixesBody && !d.made.bodyToUnderarm ? 'length less the armhole that the sleeve as made needs' : null;
    case S.length:
    case S.shoulderToHem:
    case S.pieceLength:
      return lengthFollows;
    case S.pieceFrontNeck:
      if (d.neckline === 'v') return 'from the V’s point under its band';
      return keepsFront(d) ? null : widened(v);
    case S.raglanFrontNeck:
      return d.neckline === 'v' ? 'from the V’s point under its band' : null;
    case S.shoulderWidth:
    case S.pieceShoulderWidth:
    case S.backShoulder:
    case S.frontShoulder:
      return keepsWidth(d) || widened(v) === null ? null : 'what the neck leaves, made larger for the head';
    case S.frontEdge:
      return d.neckline === 'v' ? 'from the V’s point under its band' : lengthFollows;
    case S.neckWidth:
    case S.pieceNeckWidth:
      if (keepsWidth(d)) return null;
      return keptByShoulders(v) && widened(v) !== null ? 'kept to what the shoulders carry' : widened(v);
    case S.frontNeck:
      return keepsFront(d) ? null : widened(v);
    case S.backNeck:
    case S.pieceBackNeck:
      return keepsBack(d) ? null : widened(v);
    default:
      return null;
  }
}
