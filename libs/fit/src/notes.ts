import { weightOf } from '#fabric';
import type { AdviceNote, Check, Piece } from './advice.ts';
import { easeDisagreement } from './advised-ease.ts';
import type { Decisions } from './decisions.ts';
import { easeBands, easeLies } from './ease.ts';
import type { FitRequest } from './fit-request.ts';
import { openingOf } from './check-cures.ts';
import type { NoteCodes } from './messages/note-codes.ts';
import { NONE } from './messages/none.ts';
import type { Source } from './messages/source-codes.ts';
import { keptByShoulders } from './neck.ts';
import { cureForNoSleeve } from './no-sleeve.ts';
import { tried } from './trial.ts';
import type { WorkedOut } from './work-out.ts';
import { CHECK_RULES } from './check-rules.ts';
import { type Row, S } from './slots.ts';

/** A neck this much smaller than the neck is told of, mm: less shows on no tape. */
const TIGHT = 2;

const HIP = CHECK_RULES.find(({ check }) => check === 'hip')!;

/** Twice the area a closed outline encloses, counter-clockwise positive, mm². */
function doubledArea(outline: readonly (readonly [number, number])[]): number {
  return outline.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
}

function weightNotes(pieces: readonly Piece[], { fabric, rules }: FitRequest): AdviceNote[] {
  if (fabric.massPerAreaGsm === null || !pieces.some(({ piece, outline }) => outline && !piece.endsWith('-band')))
    return [];
  const area = pieces.reduce((sum, { outline, make }) => sum + (outline ? (make * doubledArea(outline)) / 2 : 0), 0);
  const allDrawn = pieces.every(({ outline }) => outline);
  const grams = weightOf(area, fabric.massPerAreaGsm);
  const aboveGrams = rules['heavy-grams'];
  const weight: AdviceNote = { code: 'weight', params: { grams, allDrawn } };
  const source: Source = { code: 'rule', params: { rule: 'heavy-grams' } };
  return grams > aboveGrams ? [weight, { code: 'heavy', params: { aboveGrams }, source }] : [weight];
}

/** Where the ease at the chest of a body that the hip governs comes to lie, if not where it was chosen. */
function outOfBand(request: FitRequest, worked: WorkedOut): NoteCodes['hip-governs']['outOfBand'] {
  const { decisions: d, row: v } = worked;
  const { ease } = request.design;
  if (!('category' in ease) || d.easeFromGarment || d.taken.chest) return null;
  const chosen = ease.category;
  const lies = easeLies(v[S.easeInTable]!, easeBands(d.sized), chosen);
  if (lies.code === 'within' && lies.params.category === chosen) return null;
  return { lies, chosen, taperedKeepsBoth: tried({ hem: 'tapered' }, HIP, request, worked) !== null };
}

function girthNotes(request: FitRequest, worked: WorkedOut): AdviceNote[] {
  const { nudging, decisions: d, row: v } = worked;
  const notes: AdviceNote[] = [];
  if (d.hipGoverns && !d.made.back && !d.made.front && !Number.isNaN(v[S.easeInTable]!)) {
    const wider = d.taken.hem ? 'hem-of-garment' : 'hip';
    notes.push({ code: 'hip-governs', params: { wider, outOfBand: outOfBand(request, worked) } });
  }
  const disagreement = easeDisagreement(request, nudging, d);
  if (disagreement) {
    const { difference, u } = disagreement;
    const explained = !(Math.abs(difference) > 2 * u);
    notes.push({ code: 'garment-and-ease', params: { moreMm: difference, uMm: u, explained } });
  }
  const share = v[S.stretchNeed]!;
  if (request.garment?.wornStretched && request.design.basis !== 'body' && share > 0)
    notes.push({ code: 'worn-stretched', params: { share } });
  return notes;
}

/** What was measured of the garment that fits and tells nothing alone, with the measure that it waits for. */
function waitingNotes({ garment, design }: FitRequest, { taken }: Decisions): AdviceNote[] {
  if (garment === null || design.basis === 'body') return [];
  const has = garment.values;
  const notes: AdviceNote[] = [];
  const add = (params: NoteCodes['garment-measure-waits']): void =>
    void notes.push({ code: 'garment-measure-waits', params });
  if (has['shoulder-to-hem'] && !taken.length && design.length !== 'custom')
    add({ given: 'shoulder-to-hem', lacking: 'back-neck-depth', kept: 'length' });
  if (has['sleeve-length'] && !taken.nape && design.silhouette !== 'vest')
    add({
      given: 'sleeve-length',
      lacking: garment.construction === 'raglan' ? 'neck-width' : 'cross-back-width',
      kept: 'nape-to-cuff',
    });
  return notes;
}

/** By how much each part of a neck was made larger for the head, percent; null where none was. */
function neckGrown(v: Row): Pick<NoteCodes['neck-widened'], 'widthPercent' | 'frontPercent' | 'backPercent'> | null {
  if (!(v[S.neckScale]! > 1)) return null;
  // What was nothing, as a depth of 0 that was chosen, is nothing still.
  const percent = (now: number, start: number): number =>
    v[start]! > 0 ? Math.round((v[now]! / v[start]! - 1) * 100) : 0;
  const widthPercent = percent(S.neckWidth, S.startNeckWidth);
  const frontPercent = percent(S.frontNeck, S.startFrontNeck);
  const backPercent = percent(S.backNeck, S.startBackNeck);
  const grown = widthPercent !== 0 || frontPercent > 0 || backPercent > 0;
  return grown ? { widthPercent, frontPercent, backPercent } : null;
}

function shapeNotes(request: FitRequest, { decisions: d, row: v }: WorkedOut, checks: readonly Check[]): AdviceNote[] {
  const notes: AdviceNote[] = [];
  if (d.construction !== request.design.construction)
    notes.push({ code: 'squared-as-drop', params: { hardlyWider: v[S.panel]! > v[S.acrossBack]! } });
  const head = checks.find(({ check }) => check === 'head-through-neck');
  const grown = neckGrown(v);
  if (grown !== null && head?.verdict !== 'fails')
    notes.push({ code: 'neck-widened', params: { ...grown, keptByShoulders: keptByShoulders(v) } });
  if (head?.verdict === 'fails') notes.push({ code: 'shoulder-opening', params: { opening: openingOf(d) } });
  const shorterMm = v[S.neckBase]! - v[S.neckOpening]!;
  if (shorterMm > TIGHT) notes.push({ code: 'neck-tight', params: { shorterMm } });
  if (d.silhouette === 'vest' && !Number.isNaN(v[S.band]!))
    notes.push({ code: 'armhole-bands', params: { depthMm: v[S.band]! } });
  if (d.silhouette === 'vest' && d.construction === 'raglan') notes.push({ code: 'raglan-vest', params: NONE });
  const cure = cureForNoSleeve(v, d);
  if (cure !== null) notes.push({ code: 'no-sleeve', params: { cure } });
  return notes;
}

/** What is said of the sheet as a whole, besides the notes of fabric and body profile. */
export function notesOn(
  request: FitRequest,
  worked: WorkedOut,
  checks: readonly Check[],
  pieces: readonly Piece[],
): AdviceNote[] {
  return [
    ...girthNotes(request, worked),
    ...waitingNotes(request, worked.decisions),
    ...shapeNotes(request, worked, checks),
    ...weightNotes(pieces, request),
  ];
}
