import { weightOf } from '#fabric';
import type { AdviceNote, Check, Piece } from '../messages/advice.ts';
import { armholeOf, closingOf } from '../checks/cures.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import type { Computed } from '../evaluation/compute.ts';
import { easeBands, easeLies } from '../inputs/ease.ts';
import type { FitRequest } from '../inputs/fit-request.ts';
import type { NoteCodes } from '../messages/note-codes.ts';
import { NONE } from '../messages/none.ts';
import type { Source } from '../messages/source-codes.ts';
import { hipGoverns } from '../evaluation/evaluate-choices.ts';
import type { GarmentModel } from '../model/garment-model.ts';
import { INPUTS } from '../model/inputs.ts';
import { isKeptByShoulders } from '../tracing/solved-terms.ts';
import type { ValueOf } from '../model/path.ts';
import { evaluateChange } from '../remedies/evaluate-change.ts';
import { polygonArea, type Quantity } from '#measure';
import { cureForNoSleeve } from '../evaluation/no-sleeve.ts';

/** A note says where a neck is smaller than the body’s by this much, mm: less shows on no tape. */
const TIGHT = 2;

function weightNotes(pieces: readonly Piece[], { fabric, rules }: FitRequest): AdviceNote[] {
  if (fabric.massPerAreaGsm === null || !pieces.some(({ piece, outline }) => outline && !piece.endsWith('-band')))
    return [];
  const area = pieces.reduce((sum, { outline, make }) => sum + (outline ? make * polygonArea(outline) : 0), 0);
  const allDrawn = pieces.every(({ outline }) => outline);
  const grams = weightOf(area, fabric.massPerAreaGsm);
  const aboveGrams = rules['heavy-grams'];
  const weight: AdviceNote = { code: 'weight', params: { grams, allDrawn } };
  const source: Source = { code: 'rule', params: { rule: 'heavy-grams' } };
  return grams > aboveGrams ? [weight, { code: 'heavy', params: { aboveGrams }, source }] : [weight];
}

/** Where the ease at the chest of a body that the hip governs comes to lie, if not where it was chosen. */
function outOfBand(computed: Computed): NoteCodes['hip-governs']['outOfBand'] {
  const { request, choices, wearer, model, evaluation } = computed;
  const { ease } = request.design;
  if (!('category' in ease) || choices.kept.chest) return null;
  const chosen = ease.category;
  const lies = easeLies(evaluation.value(model.garment.girths.easeInTable), easeBands(wearer.sized), chosen);
  if (lies.code === 'within' && lies.params.category === chosen) return null;
  const hip = model.checks.find(({ rule }) => rule.check === 'hip')!.traced!;
  return { lies, chosen, taperedKeepsBoth: evaluateChange({ hem: 'tapered' }, hip, computed) !== null };
}

function girthNotes(computed: Computed): AdviceNote[] {
  const { request, choices, model, evaluation } = computed;
  const { made, kept } = choices;
  const v = evaluation.value;
  const notes: AdviceNote[] = [];
  if (hipGoverns(computed) && !made.back && !made.front && !Number.isNaN(v(model.garment.girths.easeInTable))) {
    const wider = kept.hem ? 'hem-of-garment' : 'hip';
    notes.push({ code: 'hip-governs', params: { wider, outOfBand: outOfBand(computed) } });
  }
  const stretch = model.checks.find(({ rule }) => rule.check === 'negative-ease')!.traced!;
  const share = v(stretch.need);
  if (request.garment?.wornStretched && request.design.basis !== 'body' && share > 0)
    notes.push({ code: 'worn-stretched', params: { share } });
  return notes;
}

/** What was measured of the garment that fits and tells nothing alone, with the measure that it waits for. */
function waitingNotes({ request: { garment, design }, choices: { kept } }: Computed): AdviceNote[] {
  if (garment === null || design.basis === 'body') return [];
  const has = garment.values;
  const notes: AdviceNote[] = [];
  const add = (params: NoteCodes['garment-measure-waits']): void =>
    void notes.push({ code: 'garment-measure-waits', params });
  const [lacking] = CONSTRUCTIONS[garment.construction].refSleeveNeeds;
  if (lacking && has['sleeve-length'] && garment.sleeve === 'long' && !kept.napeToCuff && design.silhouette !== 'vest')
    add({ given: 'sleeve-length', lacking });
  return notes;
}

/** By how much each part of a neck was made larger for the head, percent; null where none was. */
function neckGrown(
  { neck }: GarmentModel,
  v: ValueOf,
): Pick<NoteCodes['neck-widened'], 'widthPercent' | 'frontPercent' | 'backPercent'> | null {
  if (!(v(neck.scale) > 1)) return null;
  // What was nothing, as a depth of 0 that was chosen, is nothing still.
  const percent = (now: Quantity, start: Quantity): number =>
    v(start) > 0 ? Math.round((v(now) / v(start) - 1) * 100) : 0;
  const widthPercent = percent(neck.width, neck.start.width);
  const frontPercent = percent(neck.front, neck.start.front);
  const backPercent = percent(neck.back, neck.start.back);
  const grown = widthPercent !== 0 || frontPercent > 0 || backPercent > 0;
  return grown ? { widthPercent, frontPercent, backPercent } : null;
}

/** How the neck opens, and what became of the maker's own opening. */
function openingNotes({ request, choices, wearer, model, evaluation }: Computed): AdviceNote[] {
  const { opening } = model.garment;
  const asked = request.design.opening;
  const { at, how } = choices.opening;
  if (choices.silhouette === 'cardigan')
    return asked && asked.at !== 'none' ? [{ code: 'opening-needless', params: NONE }] : [];
  if (!opening || at === 'none') return [];
  const lengthMm = evaluation.value(opening.length);
  if (Number.isNaN(lengthMm)) return [];
  const atBack = asked !== null && asked.at !== at;
  const beside = armholeOf(choices);
  return [
    { code: 'neck-opens', params: { at, beside, lengthMm, closing: closingOf(wearer, at) } },
    ...(how === 'whole'
      ? [{ code: 'opening-ends', params: { at, beside, askedMm: asked!.lengthMm!, lengthMm } } as const]
      : []),
    ...(atBack ? [{ code: 'opening-at-back', params: NONE } as const] : []),
  ];
}

function shapeNotes(computed: Computed, checks: readonly Check[]): AdviceNote[] {
  const { request, choices, model, evaluation } = computed;
  const { garment } = model;
  const v = evaluation.value;
  const notes: AdviceNote[] = [];
  if (choices.construction !== request.design.construction)
    notes.push({
      code: 'squared-as-drop',
      params: { hardlyWider: v(garment.girths.panel) > v(INPUTS.acrossBack) },
    });
  const head = checks.find(({ check }) => check === 'head-through-neck');
  const grown = neckGrown(garment, v);
  if (grown !== null && head?.verdict !== 'fails')
    notes.push({ code: 'neck-widened', params: { ...grown, keptByShoulders: isKeptByShoulders(garment, v) } });
  notes.push(...openingNotes(computed));
  const shorterMm = v(INPUTS.neckBase) - v(garment.neck.opening);
  if (shorterMm > TIGHT) notes.push({ code: 'neck-tight', params: { shorterMm } });
  const band = request.design.bandMm;
  if (band !== null && v(garment.neck.band) < band - 1e-6)
    notes.push({ code: 'band-ends', params: { askedMm: band, depthMm: v(garment.neck.band) } });
  if (garment.sleeve === null && !CONSTRUCTIONS[choices.construction].hasArmhole)
    notes.push({ code: 'raglan-vest', params: NONE });
  const cure = cureForNoSleeve(computed);
  if (cure !== null) notes.push({ code: 'no-sleeve', params: { cure } });
  return notes;
}

/** What is said of the sheet as a whole, besides the notes of fabric and body profile. */
export const notesOn = (computed: Computed, checks: readonly Check[], pieces: readonly Piece[]): AdviceNote[] => [
  ...girthNotes(computed),
  ...waitingNotes(computed),
  ...shapeNotes(computed, checks),
  ...weightNotes(pieces, computed.request),
];
