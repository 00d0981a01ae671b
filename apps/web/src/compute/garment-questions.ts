import { evidenceNotes, garmentNames } from '#fit';
import { GARMENT_DIMENSIONS, type GarmentDimension } from '#garment';
import { garmentBesideBody } from '#target-sheet';
import type { Computation } from './computation.ts';
import type { ValueQuestion } from './value-question.ts';
import { say } from '../messages.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import type { Tape, Typed } from '../notebook/typed.ts';
import { isConfirmed } from '../reading/garment-record.ts';
import { showLength } from '../reading/numbers.ts';
import { namesUnit, valueIn } from '../reading/read.ts';
import { lengthText } from './apply-remedy.ts';
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
      if (!among.includes(own) || isConfirmed(notes, note.params.measure)) continue;
      questions[note.params.measure] = { text: besideText(note, own, tape), repairs: [], mayBeRight: true };
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

/** What a contradiction asks of the sweater of this name, short enough to stand at the measure. */
function besideText(note: ReturnType<typeof evidenceNotes>[number], own: string, tape: Tape): string {
  const { besideTape, besideSweater, numbered } = say.garment.contradicts;
  const { moreMm } = note.params;
  const by = showLength(Math.abs(moreMm), tape);
  if (note.code === 'garment-beside-tape') return besideTape(by, moreMm > 0);
  const [first, second] = note.params.garments;
  const other = own === first ? second : first;
  return besideSweater(by, (own === second) === moreMm > 0, /^\d+$/.test(other) ? numbered(other) : other);
}

/** The question about an impossible value; a number without a unit may have been meant in the other. */
function outOfReach(name: GarmentDimension, { text, tape }: Typed): GarmentQuestion {
  const other: Typed = { text, tape: tape === 'cm' ? 'in' : 'cm' };
  const mended = !namesUnit(text) && lengthOf(name, other) !== null;
  const repairs = mended ? [{ label: say.body.itIs(`${text.trim()} ${other.tape}`), to: { [name]: other } }] : [];
  return { text: say.garment.outOfReach, repairs, mayBeRight: false };
}
