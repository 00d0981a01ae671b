import type { BodyProfile, ProfileValue } from '#body';
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
  const filledIn = BODY_MEASURES.flatMap((name) => {
    const value = body?.values[name];
    return value && isFilledIn(value) ? [{ name, from: value.from }] : [];
  });
  const ways = [...new Set(filledIn.map(({ from }) => from))];
  return ways.map((way) => {
    const named = filledIn.filter(({ from }) => from === way).map(({ name }) => name.replaceAll('-', ' '));
    return { code: 'not-measured', text: `Not measured: ${named.join(', ')}. Taken instead: ${way}.` };
  });
}

const isFilledIn = ({ how }: ProfileValue): boolean => how === 'estimated' || how === 'table';
