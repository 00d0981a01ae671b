import type { Contradiction } from '#body';
import { garmentNames } from '#fit';
import { GARMENT_DIMENSIONS, type GarmentDimension } from '#garment';
import { garmentBesideBody } from '#target-sheet';
import type { ValueQuestion } from './value-question.ts';
import { say } from '../messages.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { isConfirmed } from '../reading/garment-record.ts';
import { showLength } from '../reading/numbers.ts';
import { namesUnit, valueIn } from '../reading/read.ts';
import { lengthText } from './apply-remedy.ts';
import type { Computation } from './computation.ts';
import { lengthOf } from './to-garment.ts';

type GarmentQuestion = ValueQuestion<GarmentDimension>;
type Questions = Partial<Record<GarmentDimension, GarmentQuestion>>;

/**
 * Questions about the open sweater: impossible measurements, what contradicts the tape or another sweater, and probable slips, which
 * come with a correction. Confirmed values are not questioned again.
 */
export function garmentQuestions(
  notes: GarmentNotes,
  { input: { garments }, wearer: { body, contradictions } }: Pick<Computation, 'input' | 'wearer'>,
  tape: Tape,
): Questions {
  const questions: Questions = {};
  for (const name of GARMENT_DIMENSIONS) {
    const typed = notes.measures[name];
    if (typed && valueIn(typed) !== null && lengthOf(name, typed) === null) questions[name] = outOfReach(name, typed);
  }
  const garment = garments.find(({ basis }) => basis);
  if (garment === undefined) return questions;
  const own = garmentNames(garments)[garments.indexOf(garment)]!;
  for (const contradiction of contradictions) {
    const asked = questionOf(contradiction, own, tape);
    if (asked && !isConfirmed(notes, asked.name))
      questions[asked.name] = { text: asked.text, repairs: [], mayBeRight: true };
  }
  for (const { name, code, wouldBe } of garmentBesideBody(garment, body)) {
    const typed = notes.measures[name];
    if (typed === undefined || isConfirmed(notes, name)) continue;
    const repair = {
      label: say.body.itIs(showLength(wouldBe, typed.tape)),
      to: { [name]: lengthText(wouldBe, typed.tape) },
    };
    questions[name] = { text: say.garment.slip[code], repairs: [repair], mayBeRight: true };
  }
  return questions;
}

/** What a contradiction asks of the sweater of this name; null where it is about others. */
function questionOf(
  contradiction: Contradiction,
  own: string,
  tape: Tape,
): { readonly name: GarmentDimension; readonly text: string } | null {
  const { besideTape, besideSweater } = say.garment.contradicts;
  const show = (mm: number): string => showLength(Math.abs(mm), tape);
  if (contradiction.between === 'tape') {
    const { source, id, difference } = contradiction.observation;
    if (source !== own) return null;
    return { name: id as GarmentDimension, text: besideTape(show(difference), difference > 0) };
  }
  const { id, sources, difference } = contradiction;
  if (!sources.includes(own)) return null;
  const [first, second] = sources;
  const other = own === first ? second : first;
  const more = own === second ? difference > 0 : difference < 0;
  return { name: id as GarmentDimension, text: besideSweater(show(difference), more, nameOf(other)) };
}

/** A sweater without a name is called by its number. */
const nameOf = (name: string): string => (/^\d+$/.test(name) ? say.garment.numbered(name) : name);

/** The question about an impossible value; a number without a unit may have been meant in the other. */
function outOfReach(name: GarmentDimension, { text, tape }: Typed): GarmentQuestion {
  const other: Typed = { text, tape: tape === 'cm' ? 'in' : 'cm' };
  const mended = !namesUnit(text) && lengthOf(name, other) !== null;
  const repairs = mended ? [{ label: say.body.itIs(`${text.trim()} ${other.tape}`), to: { [name]: other } }] : [];
  return { text: say.garment.outOfReach, repairs, mayBeRight: false };
}
