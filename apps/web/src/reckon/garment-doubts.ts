import type { BodyProfile } from '#body';
import { garmentProblems, type Garment, type GarmentDimension } from '#garment';
import { garmentBesideBody } from '#target-sheet';
import type { Question } from '../body/Ask.tsx';
import { say } from '../messages.ts';
import type { GarmentNotes } from '../notebook/notebook.ts';
import { showLength } from '../reading/numbers.ts';
import { written } from './apply-remedy.ts';

type Questions = Partial<Record<GarmentDimension, Question<GarmentDimension>>>;

/** Measures of the sweater that fits that look like a slip; what she has confirmed is not asked again. */
export function garmentDoubts(notes: GarmentNotes, garment: Garment | null, body: BodyProfile | null): Questions {
  if (garment === null || garmentProblems(garment).length > 0) return {};
  const questions: Questions = {};
  for (const { name, slip, wouldBe } of garmentBesideBody(garment, body)) {
    const typed = notes.measures[name];
    if (typed === undefined || notes.confirmed[name] === typed.text) continue;
    const repair = {
      label: say.body.itIs(showLength(wouldBe, typed.tape)),
      to: { [name]: written(wouldBe, typed.tape) },
    };
    questions[name] = { text: say.garment.slip[slip], repairs: [repair], mayBeRight: true };
  }
  return questions;
}
