import { dimensionText, type BodyProfile, type ProfileValue } from '#body';
import type { Fabric } from '#fabric';
import { BODY_MEASURES } from '#fit';
import type { SheetNote } from './sheet-parts.ts';

/** The notes of a sheet, each once: of the body, the fabric and the advice, and which of the body's measures it rests on were not taken. */
export function sheetNotes(body: BodyProfile | null, fabric: Fabric, advised: readonly SheetNote[]): SheetNote[] {
  const all: SheetNote[] = [...(body?.notes ?? []), ...fabric.notes, ...advised, ...notMeasured(body)];
  return all.filter(
    (note, index) => all.findIndex(({ code, text }) => code === note.code && text === note.text) === index,
  );
}

/** One note for each way in which values were filled in. */
function notMeasured(body: BodyProfile | null): SheetNote[] {
  const ways = new Map<string, string[]>();
  for (const name of BODY_MEASURES) {
    const value = body?.values[name];
    if (!value || !isFilledIn(value)) continue;
    const named = ways.get(value.from);
    if (named) named.push(dimensionText(name));
    else ways.set(value.from, [dimensionText(name)]);
  }
  return Array.from(ways, ([way, named]) => {
    return { code: 'not-measured', text: `Not measured: ${named.join(', ')}. Taken instead: ${way}.` };
  });
}

const isFilledIn = ({ how }: ProfileValue): boolean => how === 'estimated' || how === 'table';
