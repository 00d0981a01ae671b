import { text } from '#advice-text';
import { evidenceNotes, garmentNames } from '#fit';
import { GARMENT_DIMENSIONS, type GarmentDimension } from '#garment';
import { garmentBesideBody } from '#target-sheet';
import type { Computation } from './computation.ts';
import type { ValueQuestion } from './value-question.ts';
import { say } from '../messages.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';
import { namesUnit, valueIn } from '../reading/read.ts';
import { lengthText } from './apply-remedy.ts';
import type { Computation } from './computation.ts';
import { lengthOf } from './to-garment.ts';

type GarmentQuestion = ValueQuestion<GarmentDimension>;
type Questions = Partial<Record<GarmentDimension, GarmentQuestion>>;

/**
 * Questions about the sweater that is open: impossible measurements, what contradicts her body or another sweater, and probable slips;
 * confirmed values are not questioned again.
 */
export function garmentQuestions(notes: GarmentNotes, computation: Computation, tape: Tape): Questions {
  const { input, wearer, profile } = computation;
  const place = input.garments.findIndex(({ basis }) => basis);
  const garment = input.garments[place];
  const questions: Questions = {};
  if (wearer !== null && garment !== undefined) {
    const own = garmentNames(input.garments)[place]!;
    for (const note of evidenceNotes(wearer)) {
      const among = note.code === 'garment-beside-tape' ? [note.params.garment] : note.params.garments;
      const question = { text: text('note', note, { tape }), repairs: [], mayBeRight: true };
      if (among.includes(own)) questions[note.params.measure] = question;
    }
  }
  for (const name of GARMENT_DIMENSIONS) {
    const typed = notes.measures[name];
    if (typed && valueIn(typed) !== null && lengthOf(name, typed) === null) questions[name] = outOfReach(name, typed);
  }
  for (const { name, code, wouldBe } of garment === undefined ? [] : garmentBesideBody(garment, profile)) {
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
