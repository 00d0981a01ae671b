import type { TargetSheet } from '#target-sheet';

/** What can be asked of a dimension: its value as worn, how far it may be rounded, or (on a piece) its size off the needles, unwashed. */
export const PARTS = ['value', 'low', 'high', 'as-made'] as const;
export type Part = (typeof PARTS)[number];

/** A dimension of a sheet: `place` is `assembled` or the name of a piece. */
export interface DimensionName {
  readonly place: string;
  readonly dimension: string;
  readonly part: Part;
}

/** What a sheet says beside its dimensions, by our names for it. `fabric/thickness` is a length in the sheet's unit. */
export const SHEET_FACTS = {
  'sheet/id': (sheet: TargetSheet) => sheet.id,
  'sheet/title': (sheet: TargetSheet) => sheet.title,
  'sheet/created-at': (sheet: TargetSheet) => sheet.createdAt,
  'sheet/unit': (sheet: TargetSheet) => sheet.unit,
  'design/silhouette': (sheet: TargetSheet) => sheet.design.silhouette,
  'design/construction': (sheet: TargetSheet) => sheet.design.construction,
  'design/length': (sheet: TargetSheet) => sheet.design.length,
  'design/neckline': (sheet: TargetSheet) => sheet.design.neckline,
  'design/basis': (sheet: TargetSheet) => sheet.design.basis,
  'fabric/thickness': (sheet: TargetSheet) => sheet.fabric.thickness,
} as const;
export type SheetFact = keyof typeof SHEET_FACTS;

const WORD = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
const isFact = (name: string): name is SheetFact => Object.hasOwn(SHEET_FACTS, name);
const isPart = (word: string): word is Part => (PARTS as readonly string[]).includes(word);

/**
 * Reads one of our names: `place/dimension` for a dimension's value (`assembled/chest-width`, `sleeve/sleeve-length`),
 * `place/dimension/part` for its `low`, `high` or `as-made` (`back/width/as-made`), or one of `SHEET_FACTS`.
 * Null where it is none of these. Whether a sheet has such a dimension is another question.
 */
export function parseOurName(name: string): DimensionName | SheetFact | null {
  if (isFact(name)) return name;
  const [place, dimension, part = 'value', ...rest] = name.split('/');
  if (place === undefined || dimension === undefined || rest.length > 0) return null;
  if (!WORD.test(place) || !WORD.test(dimension) || !isPart(part)) return null;
  if (place === 'sheet' || place === 'design' || place === 'fabric') return null;
  if (place === 'assembled' && part === 'as-made') return null;
  return { place, dimension, part };
}

/** Every name a sheet can answer to by default: its id, title, date and unit, then the value of each dimension, assembled first. */
export function namesOf(sheet: TargetSheet): string[] {
  const dimensions = [
    ...sheet.assembled.map(({ name }) => `assembled/${name}`),
    ...sheet.pieces.flatMap(({ piece, dimensions }) => dimensions.map(({ name }) => `${piece}/${name}`)),
  ];
  return ['sheet/id', 'sheet/title', 'sheet/created-at', 'sheet/unit', ...dimensions];
}
