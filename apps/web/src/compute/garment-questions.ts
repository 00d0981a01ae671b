import type { BodyProfile } from '#body';
import { GARMENT_DIMENSIONS, type Garment, type GarmentDimension } from '#garment';
import { garmentBesideBody } from '#target-sheet';
import type { ValueQuestion } from './value-question.ts';
import { say } from '../messages.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import type { Typed } from '../notebook/typed.ts';
import { showLength } from '../reading/numbers.ts';
import { namesUnit, valueIn } from '../reading/read.ts';
import { lengthText } from './apply-remedy.ts';
import { lengthOf } from './to-garment.ts';

type GarmentQuestion = ValueQuestion<GarmentDimension>;
type Questions = Partial<Record<GarmentDimension, GarmentQuestion>>;

/** Questions about impossible measurements and probable slips of the sweater that fits; confirmed values are not questioned again. */
export function garmentQuestions(notes: GarmentNotes, garment: Garment | null, body: BodyProfile | null): Questions {
  const questions: Questions = {};
  for (const name of GARMENT_DIMENSIONS) {
    const typed = notes.measures[name];
    if (typed && valueIn(typed) !== null && lengthOf(name, typed) === null) questions[name] = outOfReach(name, typed);
  }
  for (const { name, code, wouldBe } of garment === null ? [] : garmentBesideBody(garment, body)) {
    const typed = notes.measures[name];
    if (typed === undefined || notes.confirmed[name] === typed.text) continue;
    const repair = {
      label: say.body.itIs(showLength(wouldBe, typed.tape)),
      to: { [name]: lengthText(wouldBe, typed.tape) },
    };
    questions[name] = { text: say.garment.slip[code], repairs: [repair], mayBeRight: true };
  }
  return questions;
}

/** The question about an impossible value; a number without a unit may have been meant in the other. */
function outOfReach(name: GarmentDimension, { text, tape }: Typed): GarmentQuestion {
  const other: Typed = { text, tape: tape === 'cm' ? 'in' : 'cm' };
  const mended = !namesUnit(text) && lengthOf(name, other) !== null;
  const repairs = mended ? [{ label: say.body.itIs(`${text.trim()} ${other.tape}`), to: { [name]: other } }] : [];
  return { text: say.garment.outOfReach, repairs, mayBeRight: false };
}
