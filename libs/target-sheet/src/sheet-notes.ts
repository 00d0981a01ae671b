import { noteWithText, type Language, type Reader } from '#advice-text';
import type { BodyDimension, BodyNote, BodyProfile, BodySource, ProfileValue } from '#body';
import type { Fabric } from '#fabric';
import { BODY_MEASURES } from '#fit';
import type { SheetNote } from './sheet-parts.ts';

/** The notes of a sheet, each once: of the body, the fabric and the advice, and which of the body's measures it rests on were not taken. */
export function sheetNotes(
  body: BodyProfile | null,
  fabric: Fabric,
  advised: readonly SheetNote[],
  reader: Reader,
  language?: Language,
): SheetNote[] {
  const ofBody = (note: BodyNote): SheetNote => noteWithText('bodyNote', note, reader, language);
  const all = [
    ...(body?.notes ?? []).map(ofBody),
    ...fabric.notes.map((note) => noteWithText('fabricNote', note, reader, language)),
    ...advised,
    ...notMeasured(body).map(ofBody),
  ];
  return all.filter(
    (note, index) => all.findIndex(({ code, text }) => code === note.code && text === note.text) === index,
  );
}

/** One note for each way in which values were filled in. */
function notMeasured(body: BodyProfile | null): BodyNote[] {
  const ways = new Map<string, { readonly names: BodyDimension[]; readonly from: BodySource }>();
  for (const name of BODY_MEASURES) {
    const value = body?.values[name];
    if (!value || !isFilledIn(value)) continue;
    const key = JSON.stringify(value.from);
    const way = ways.get(key) ?? { names: [], from: value.from };
    way.names.push(name);
    ways.set(key, way);
  }
  return Array.from(ways.values(), (params) => ({ code: 'not-measured', params }));
}

const isFilledIn = ({ how }: ProfileValue): boolean => how === 'estimated' || how === 'table';
