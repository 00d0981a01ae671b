import { normalCdf } from '#measure';
import type { AdvisedDesign } from './advice.ts';
import type { Decisions } from './decisions.ts';
import { bandOf, type EaseBand, easeBands, easeLies } from './ease.ts';
import type { FitRequest } from './fit-request.ts';
import type { Nudging } from './nudging.ts';
import type { Leeway } from './rounding.ts';
import { S } from './slots.ts';

const known = (x: number): number | null => (Number.isNaN(x) ? null : x);

/**
 * Standard uncertainty of the ease in the table's terms of the finished garment, mm: of the girth to make, and the making.
 * With a garment that fits, of how far that garment and the wearer are known; the new fabric's thickness drops out.
 */
function easeUncertainty(request: FitRequest, nudging: Nudging, d: Decisions): number {
  const making = request.rules.making * nudging.base[S.bodyFlat]!;
  const reference = d.taken.chest ? referenceEaseUncertainty(request) : nudging.uncertainty(S.bodyFlat);
  return Math.hypot(reference, making);
}

/** Of a garment's own ease: its width and thickness, the wearer's chest, what is worn beneath it. */
function referenceEaseUncertainty({ garment, body }: FitRequest): number {
  if (!garment) return 0;
  const layer = 2 * Math.PI * (garment.layer?.u ?? 0);
  return Math.hypot(referenceUncertainty(garment), body?.values['chest-girth']?.u ?? 0, layer);
}

function referenceUncertainty(garment: NonNullable<FitRequest['garment']>): number {
  const width = garment.values['chest-width']?.u ?? 0;
  return Math.hypot(2 * width, 4 * garment.thicknessU);
}

/** The band that was chosen, or the one a plain number (or a garment's own ease) lies in. */
function bandOfChoice(
  request: FitRequest,
  nudging: Nudging,
  d: Decisions,
  bands: readonly EaseBand[],
): EaseBand | null {
  const choice = request.design.ease;
  if (!d.easeFromGarment && 'category' in choice) return bands.find(({ category }) => category === choice.category)!;
  return bandOf(nudging.base[S.ease]!, bands);
}

/** How far the girth may be rounded for the ease's sake, mm: to the ends of its band, or a fixed way outside every band. */
export function easeLeeway(request: FitRequest, nudging: Nudging, d: Decisions): Leeway {
  const bands = easeBands(d.sized);
  const band = bandOfChoice(request, nudging, d, bands);
  const ease = nudging.base[S.easeInTable]!;
  if (!band || Number.isNaN(ease)) {
    const room = (Number.isNaN(d.kappa) ? d.rules : d.sized)['bare-ease-room'];
    return { down: -room, up: room };
  }
  return { down: Math.min(band.from - ease, 0), up: Math.max(band.to - ease, 0) };
}

/** What the ease came to, in the terms of the sheet. */
export function advisedEase(request: FitRequest, nudging: Nudging, d: Decisions): AdvisedDesign['ease'] {
  const v = nudging.base;
  const choice = request.design.ease;
  const bands = easeBands(d.sized);
  const ease = v[S.easeInTable]!;
  const named = !d.easeFromGarment && 'category' in choice;
  const band = named ? bandOfChoice(request, nudging, d, bands) : null;
  return {
    category: named ? choice.category : null,
    place: named ? choice.place : null,
    chosen: known(v[S.ease]!),
    tableTerms: known(ease),
    lies: Number.isNaN(ease) ? null : easeLies(ease, bands, named ? choice.category : null),
    flat: known(v[S.flatEase]!),
    room: known(v[S.room]!),
    chanceOfBand: band && !Number.isNaN(ease) ? chanceWithin(band, ease, easeUncertainty(request, nudging, d)) : null,
  };
}

/** What is wider than the loosest band is oversized still. */
function chanceWithin({ category, from, to }: EaseBand, ease: number, u: number): number {
  const closer = u === 0 ? Number(ease < from) : normalCdf((from - ease) / u);
  if (category === 'oversized') return 1 - closer;
  return (u === 0 ? Number(ease <= to) : normalCdf((to - ease) / u)) - closer;
}

/**
 * How far the garment that fits and the chosen ease disagree (basis `both`): mm, and its standard uncertainty.
 * Null unless both are there.
 */
export function easeDisagreement(
  request: FitRequest,
  nudging: Nudging,
  d: Decisions,
): { readonly difference: number; readonly u: number } | null {
  const { garment, design } = request;
  const difference = nudging.base[S.easeOfReference]! - nudging.base[S.ease]!;
  if (design.basis !== 'both' || !d.taken.chest || !garment || Number.isNaN(difference)) return null;
  return { difference, u: referenceEaseUncertainty(request) };
}
