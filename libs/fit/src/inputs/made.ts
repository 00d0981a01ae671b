import type { MadePiece } from '../messages/advice.ts';
import type { Design } from '../design/design.ts';
import type { Made } from '../design/choices.ts';
import { CONSTRUCTIONS } from '../constructions/index.ts';
import { fitError, type MadeUnfit } from '../design/fit-errors.ts';
import type { InputTerm } from '../messages/term-codes.ts';
import type { InputName } from '../model/inputs.ts';

type MadeKind = keyof Made;

const INPUT_OF: Readonly<Record<MadeKind, InputName>> = {
  back: 'madeBack',
  front: 'madeFront',
  armhole: 'madeArmhole',
  sleeveTop: 'madeSleeveTop',
  cap: 'madeCap',
  sleeveRaglan: 'madeSleeveRaglan',
  cuff: 'madeCuff',
  sleeve: 'madeSleeve',
  bodyToUnderarm: 'madeBodyToUnderarm',
  frontArmhole: 'madeFrontArmhole',
  frontToUnderarm: 'madeFrontToUnderarm',
  neckWidth: 'madeNeckWidth',
};

/** What can be said of a finished piece, and which number of the model it fixes. */
const KIND_OF: Readonly<Record<string, MadeKind>> = {
  'back/width': 'back',
  'front/width': 'front',
  'left-front/width': 'front',
  'right-front/width': 'front',
  'back/armhole-depth': 'armhole',
  'front/armhole-depth': 'frontArmhole',
  'left-front/armhole-depth': 'frontArmhole',
  'right-front/armhole-depth': 'frontArmhole',
  'back/raglan-depth': 'armhole',
  'front/raglan-depth': 'frontArmhole',
  'back/body-to-underarm': 'bodyToUnderarm',
  'front/body-to-underarm': 'frontToUnderarm',
  'left-front/body-to-underarm': 'frontToUnderarm',
  'right-front/body-to-underarm': 'frontToUnderarm',
  'back/neck-width': 'neckWidth',
  'sleeve/sleeve-top-width': 'sleeveTop',
  'sleeve/cap-height': 'cap',
  'sleeve/sleeve-raglan-depth': 'sleeveRaglan',
  'sleeve/cuff-width': 'cuff',
  'sleeve/sleeve-length': 'sleeve',
};

/** Measures of finished pieces that the advice can take in, as `piece/name`. */
export const MADE_MEASURES: readonly string[] = Object.keys(KIND_OF);

/** Finished pieces, read: which numbers they fix, and to what. */
interface MadeRead {
  readonly made: Made;
  readonly inputs: ReadonlyMap<InputName, { readonly value: number; readonly term: InputTerm }>;
}

/** What a finished piece fixes: the number as entered, and as the model takes it. */
interface MadeInput {
  readonly entered: number;
  readonly value: number;
  readonly term: InputTerm;
}

/** A left or right front's width stands for a whole front's: its band and overlap taken out of it, and twice. */
function madeInput(made: MadePiece, design: Design, frontBand: number, overlap: number): MadeInput {
  const entered = made.value;
  const half = made.piece === 'left-front' || made.piece === 'right-front';
  return half && made.name === 'width' && design.silhouette === 'cardigan'
    ? {
        entered,
        value: 2 * (entered + frontBand) - overlap,
        term: { code: 'made-half-front', params: { piece: made.piece } },
      }
    : { entered, value: entered, term: { code: 'made-piece', params: { piece: made.piece } } };
}

/**
 * Reads the measures of pieces already made, mm, flat, washed, without allowance.
 * @throws DomainError `made-unknown`, `made-unfit` or `made-twice`, its pointer the entry's place in the request.
 */
export function readMade(pieces: readonly MadePiece[], design: Design, frontBand: number, overlap: number): MadeRead {
  const inputs = new Map<InputName, MadeInput>();
  const made: Record<MadeKind, boolean> = {
    back: false,
    front: false,
    armhole: false,
    sleeveTop: false,
    cap: false,
    sleeveRaglan: false,
    cuff: false,
    sleeve: false,
    bodyToUnderarm: false,
    frontArmhole: false,
    frontToUnderarm: false,
    neckWidth: false,
  };
  pieces.forEach((piece, at) => {
    const name = `${piece.piece}/${piece.name}`;
    const kind = KIND_OF[name];
    if (!kind) throw fitError('made-unknown', { name, known: MADE_MEASURES }, `/made/${at}`);
    const why = unfit(piece, kind, design);
    if (why) throw fitError('made-unfit', { name, why }, `/made/${at}`);
    const input = INPUT_OF[kind];
    const read = madeInput(piece, design, frontBand, overlap);
    const before = inputs.get(input);
    if (before && Math.abs(before.value - read.value) > 1e-9)
      throw fitError('made-twice', { name, earlierMm: before.entered }, `/made/${at}`);
    made[kind] = true;
    inputs.set(input, read);
  });
  // A front made alone is what the back will be.
  const standsAlone = (front: MadeKind, back: MadeKind): void => {
    if (!made[front] || made[back]) return;
    inputs.set(INPUT_OF[back], inputs.get(INPUT_OF[front])!);
    inputs.delete(INPUT_OF[front]);
    made[back] = true;
    made[front] = false;
  };
  standsAlone('frontArmhole', 'armhole');
  standsAlone('frontToUnderarm', 'bodyToUnderarm');
  return { made, inputs };
}

/** Why a finished piece does not go with a design; null where it does. */
function unfit({ piece, name }: MadePiece, kind: MadeKind, design: Design): MadeUnfit | null {
  const cardigan = design.silhouette === 'cardigan';
  if (cardigan && piece === 'front') return 'front-of-cardigan';
  if (!cardigan && piece.endsWith('-front')) return 'half-front';
  if (design.silhouette === 'vest' && piece === 'sleeve') return 'sleeve-of-vest';
  const { depth, rise } = CONSTRUCTIONS[design.construction].madeNames;
  if (kind === 'cap' && rise !== 'cap-height') return 'cap-without-set-in';
  if (kind === 'sleeveRaglan' && rise !== 'sleeve-raglan-depth') return 'sleeve-raglan-without-raglan';
  if ((kind === 'armhole' || kind === 'frontArmhole') && name !== depth)
    return depth === 'raglan-depth' ? 'armhole-of-raglan' : 'raglan-without-raglan';
  return null;
}
