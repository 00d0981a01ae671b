import type { Texts } from '../texts.ts';
import { bodyMissing } from './body-missing.ts';
import { bodyNotes } from './body-notes.ts';
import { cautions } from './cautions.ts';
import { checks } from './checks.ts';
import { ease } from './ease.ts';
import { errors } from './errors.ts';
import { fabricNotes } from './fabric.ts';
import { howToMeasure } from './how-to-measure.ts';
import { noAdvice } from './no-advice.ts';
import { notes } from './notes.ts';
import { missing, plannerWarnings } from './planners.ts';
import { printed } from './printed.ts';
import { bodyQuestions, garmentQuestions } from './questions.ts';
import { remedies } from './remedies.ts';
import { sources } from './sources.ts';
import { terms } from './terms.ts';
import { wishes } from './wishes.ts';

/** English. */
export const en: Texts = {
  error: errors,
  howToMeasure,
  bodyQuestion: bodyQuestions,
  bodyNote: bodyNotes,
  bodyMissing,
  garmentQuestion: garmentQuestions,
  fabricNote: fabricNotes,
  term: terms,
  source: sources,
  noAdvice,
  check: checks,
  remedy: remedies,
  wish: wishes,
  ease,
  note: notes,
  caution: cautions,
  missing,
  plannerWarning: plannerWarnings,
  printed,
};
