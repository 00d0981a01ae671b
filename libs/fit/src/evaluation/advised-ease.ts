import { normalCdf } from '#measure';
import type { AdvisedDesign } from '../messages/advice.ts';
import type { Computed } from './compute.ts';
import { bandOf, type EaseBand, easeBands, easeLies } from '../inputs/ease.ts';
import type { Leeway } from '../engine/index.ts';

const known = (x: number): number | null => (Number.isNaN(x) ? null : x);

/** Standard uncertainty of the finished garment's ease, mm: the sheet is fixed, so of the body, the fabric and the making. */
function easeUncertainty({ request, model, evaluation }: Computed): number {
  const { bodyFlat, easeInTable } = model.garment.girths;
  return Math.hypot(evaluation.judgedUncertainty(easeInTable), request.rules.making * evaluation.value(bodyFlat));
}

/** The band that was chosen, or the one a plain number (or a garment's own ease) lies in. */
function bandOfChoice({ request, model, evaluation }: Computed, bands: readonly EaseBand[]): EaseBand | null {
  const choice = request.design.ease;
  if ('category' in choice) return bands.find(({ category }) => category === choice.category)!;
  return bandOf(evaluation.value(model.garment.girths.ease), bands);
}

/** How far the girth may be rounded for the ease's sake, mm: to the ends of its band, or a fixed way outside every band. */
export function easeLeeway(computed: Computed): Leeway {
  const { wearer, kappa, request, model, evaluation } = computed;
  const band = bandOfChoice(computed, easeBands(wearer.sized));
  const ease = evaluation.value(model.garment.girths.easeInTable);
  if (!band || Number.isNaN(ease)) {
    const room = (Number.isNaN(kappa) ? request.rules : wearer.sized)['bare-ease-room'];
    return { down: -room, up: room };
  }
  return { down: Math.min(band.from - ease, 0), up: Math.max(band.to - ease, 0) };
}

/** What the ease came to, in the terms of the sheet. */
export function advisedEase(computed: Computed): AdvisedDesign['ease'] {
  const { request, wearer, model, evaluation } = computed;
  const v = evaluation.value;
  const { girths } = model.garment;
  const choice = request.design.ease;
  const bands = easeBands(wearer.sized);
  const ease = v(girths.easeInTable);
  const named = 'category' in choice;
  const band = named ? bandOfChoice(computed, bands) : null;
  return {
    category: named ? choice.category : null,
    place: named ? choice.place : null,
    chosen: known(v(girths.ease)),
    tableTerms: known(ease),
    lies: Number.isNaN(ease) ? null : easeLies(ease, bands, named ? choice.category : null),
    flat: known(v(girths.flatEase)),
    room: known(v(girths.room)),
    chanceOfBand: band && !Number.isNaN(ease) ? chanceWithin(band, ease, easeUncertainty(computed)) : null,
  };
}

/** What is wider than the loosest band is oversized still. */
function chanceWithin({ category, from, to }: EaseBand, ease: number, u: number): number {
  const closer = u === 0 ? Number(ease < from) : normalCdf((from - ease) / u);
  if (category === 'oversized') return 1 - closer;
  return (u === 0 ? Number(ease <= to) : normalCdf((to - ease) / u)) - closer;
}
