import { dimensionText, type BodyProfile, type ProfileValue } from '#body';
import { BODY_MEASURES, type Advice } from '#fit';
import type { Note } from '#measure';

/** The notes of a sheet: the advice's own, each once, and which of the body's measures it rests on were not taken. */
export function sheetNotes(advice: Advice, body: BodyProfile | null): Note[] {
  const all = [...advice.notes, ...notMeasured(body)];
  return all.filter(
    (note, index) => all.findIndex(({ code, text }) => code === note.code && text === note.text) === index,
  );
}

/** One note for each way in which values were filled in. */
function notMeasured(body: BodyProfile | null): Note[] {
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
