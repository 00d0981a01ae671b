import { weightOf } from '#fabric';
import type { Note } from '#measure';
import type { Check, Piece } from './advice.ts';
import { easeDisagreement } from './advised-ease.ts';
import type { Decisions } from './decisions.ts';
import { easeBands, easeLies } from './ease.ts';
import type { FitRequest } from './fit-request.ts';
import { inWords } from './in-words.ts';
import { lengthWords } from './length-words.ts';
import { openingOf } from './check-sayings.ts';
import { keptByShoulders } from './neck.ts';
import { whyNoSleeve } from './sleeve-shape.ts';
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

function weightNotes(pieces: readonly Piece[], { fabric, rules }: FitRequest): Note[] {
  if (fabric.massPerAreaGsm === null || !pieces.some(({ piece, outline }) => outline && !piece.endsWith('-band')))
    return [];
  const area = pieces.reduce((sum, { outline, make }) => sum + (outline ? (make * doubledArea(outline)) / 2 : 0), 0);
  const drawn = pieces.every(({ outline }) => outline) ? 'The pieces weigh' : 'The pieces that have a shape weigh';
  const grams = weightOf(area, fabric.massPerAreaGsm);
  const notes: Note[] = [{ code: 'weight', text: `${drawn} about ${Math.round(grams / 10) * 10} g.` }];
  if (grams > rules['heavy-grams'])
    notes.push({
      code: 'heavy',
      text: `Above ${rules['heavy-grams']} g long pieces drop as they hang: hang the swatch with a weight before measuring it, or make the lengths a little short.`,
      source: 'from memory',
    });
  return notes;
}

/** "3 cm less ease than", "as much ease as". */
function easeBeside(difference: number, { tape }: Decisions): string {
  const words = lengthWords(difference, tape);
  if (words === lengthWords(0, tape)) return 'as much ease as';
  return `${words} ${difference < 0 ? 'less' : 'more'} ease than`;
}

function girthNotes(request: FitRequest, worked: WorkedOut): Note[] {
  const { nudging, decisions: d, row: v } = worked;
  const notes: Note[] = [];
  if (d.hipGoverns && !d.made.back && !d.made.front && !Number.isNaN(v[S.easeInTable]!)) {
    const { ease } = request.design;
    const category = 'category' in ease && !d.easeFromGarment && !d.taken.chest ? ease.category : null;
    const lies = easeLies(v[S.easeInTable]!, easeBands(d.sized), category);
    const chosen = category && inWords(category);
    const out = chosen !== null && lies !== chosen;
    const tapered = out && tried({ hem: 'tapered' }, HIP, request, worked) !== null;
    const outOfBand = out
      ? ` At the chest that is ${lies}, not ${chosen}${tapered ? '; a tapered hem keeps both' : ''}.`
      : '';
    const wider = d.taken.hem
      ? 'the garment that fits is wider there than at its chest'
      : 'the hip is wider than the chest';
    notes.push({
      code: 'hip-governs',
      text: `The hem is straight, and ${wider}: that sets the width of the whole body.${outOfBand}`,
    });
  }
  const disagreement = easeDisagreement(request, nudging, d);
  if (disagreement) {
    const { difference, u } = disagreement;
    const question =
      Math.abs(difference) > 2 * u
        ? ' That is more than measuring explains: is the ease what you meant, and was the garment measured flat?'
        : '';
    notes.push({
      code: 'garment-and-ease',
      text: `The garment that fits has ${easeBeside(difference, d)} chosen (± ${lengthWords(u, d.tape)}).${question}`,
    });
  }
  const stretched = Math.round(v[S.stretchNeed]! * 100);
  if (request.garment?.wornStretched && request.design.basis !== 'body' && v[S.stretchNeed]! > 0)
    notes.push({
      code: 'worn-stretched',
      text: `The garment that fits is worn stretched: the new fabric must stretch ${stretched < 1 ? 'a little' : `by ${stretched} %`} all the time.`,
    });
  return notes;
}

/** What was measured of the garment that fits and tells nothing alone, with the measure that it waits for. */
function waitingNotes({ garment, design }: FitRequest, { taken }: Decisions): Note[] {
  if (garment === null || design.basis === 'body') return [];
  const has = garment.values;
  const notes: Note[] = [];
  const add = (given: string, lacking: string, kept: string): void =>
    void notes.push({
      code: 'garment-measure-waits',
      text: `The ${given} of the garment that fits is not used without its ${lacking}: measure that too, and ${kept} is kept.`,
    });
  if (has['shoulder-to-hem'] && !taken.length && design.length !== 'custom')
    add('shoulder to hem', 'back neck depth', 'its length');
  if (has['sleeve-length'] && !taken.nape && design.silhouette !== 'vest')
    add(
      'sleeve length',
      garment.construction === 'raglan' ? 'neck width' : 'cross back width',
      'its way from nape to cuff',
    );
  return notes;
}

/** By how much a neck was made larger for the head: as a whole, or which parts of it; null where it was not. */
function neckGrown(v: Row): string | null {
  if (!(v[S.neckScale]! > 1)) return null;
  const percent = (now: number, start: number): number => Math.round((v[now]! / v[start]! - 1) * 100);
  const wider = percent(S.neckWidth, S.startNeckWidth);
  const front = percent(S.frontNeck, S.startFrontNeck);
  const back = percent(S.backNeck, S.startBackNeck);
  if (wider > 0 && wider === front && wider === back) return `${wider} % larger`;
  const parts = [
    ...(wider !== 0 ? [`${Math.abs(wider)} % ${wider > 0 ? 'wider' : 'narrower'}`] : []),
    ...(front > 0 ? [`${front} % deeper${front === back ? '' : ' in front'}`] : []),
    ...(back > 0 && front !== back ? [`${back} % deeper behind`] : []),
  ];
  return parts.length === 0 ? null : parts.join(' and ');
}

function shapeNotes(request: FitRequest, { decisions: d, row: v }: WorkedOut, checks: readonly Check[]): Note[] {
  const notes: Note[] = [];
  if (d.construction !== request.design.construction)
    notes.push({
      code: 'squared-as-drop',
      text: `The body is ${v[S.panel]! > v[S.acrossBack]! ? 'hardly' : 'no'} wider than the back: a squared drop would have no inset, so this is a drop shoulder.`,
    });
  const head = checks.find(({ check }) => check === 'head-through-neck');
  const grown = neckGrown(v);
  if (grown !== null && head?.verdict !== 'fails')
    notes.push({
      code: 'neck-widened',
      text: keptByShoulders(v)
        ? `The neck is ${grown} than its rule: the shoulders carry no wider one, and the head is to pass.`
        : `The neck is ${grown} than its rule, so that the head passes.`,
    });
  const opening = openingOf(d);
  if (head?.verdict === 'fails')
    notes.push({
      code: 'shoulder-opening',
      text: `The neck as it stands does not pass the head${opening === null ? ', and a raglan vest has no seam to open' : `: if it is to stay so, ${opening}`}.`,
    });
  const tight = v[S.neckBase]! - v[S.neckOpening]!;
  if (tight > TIGHT)
    notes.push({
      code: 'neck-tight',
      text: `The neck’s finished edge is ${lengthWords(tight, d.tape)} shorter than the neck is round, and may sit tight: make it wider or deeper.`,
    });
  if (d.silhouette === 'vest' && !Number.isNaN(v[S.band]!))
    notes.push({
      code: 'armhole-bands',
      text: `Bands of ${lengthWords(v[S.band]!, d.tape)} go round the armholes; the pieces are cut out for them.`,
    });
  if (d.silhouette === 'vest' && d.construction === 'raglan')
    notes.push({
      code: 'raglan-vest',
      text: 'A raglan has no shoulders of its own: with no sleeves between them, nothing joins the front to the back above the underarm. For a vest choose a set-in, or join the slanted edges with straps.',
    });
  const withoutSleeve = whyNoSleeve(v, d);
  if (withoutSleeve !== null) notes.push({ code: 'no-sleeve', text: withoutSleeve });
  return notes;
}

/** What is said of the sheet as a whole, besides what fabric and body profile already say. */
export function notesOn(
  request: FitRequest,
  worked: WorkedOut,
  checks: readonly Check[],
  pieces: readonly Piece[],
): Note[] {
  return [
    ...(request.body?.notes ?? []),
    ...request.fabric.notes,
    ...girthNotes(request, worked),
    ...waitingNotes(request, worked.decisions),
    ...shapeNotes(request, worked, checks),
    ...weightNotes(pieces, request),
  ];
}
