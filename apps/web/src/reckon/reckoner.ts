import { resolveBody, type BodyModel, type BodyProfile, type Estimator } from '#body';
import { DomainError } from '#measure';
import { composeSheet, nextToTake, type NextToTake, type SheetInput, type TargetSheet } from '#target-sheet';
import type { Notebook } from '../notebook/notebook.ts';
import type { Tape } from '../notebook/typed.ts';
import { openEntry } from '../notebook/shelf.ts';
import { garmentDoubts } from './garment-doubts.ts';
import { questionsAbout } from './questions.ts';
import { rehearse } from './rehearse.ts';
import { remembering, steady } from './remembering.ts';
import type { Reckoned } from './reckoned.ts';
import { toBody } from './to-body.ts';
import { toSheetInput } from './to-sheet-input.ts';

export { loadBodyModel } from '#body';

/** Goes through it some dozen times while the browser rests. */
export const rehearsed = (model: BodyModel | null): void => rehearse(reckonedOf, model);

/** The preview is the computation; only a sheet that is kept has an id and a time. */
const PREVIEW = { id: '', createdAt: '' };

const RECKON = 'reckon';

/** What a maker with an empty page has not written yet; nothing to complain about. */
const TOO_LITTLE = ['body-missing', 'garment-chest-width-missing'];

const estimatorOf = remembering((model: BodyModel): Estimator => {
  const answered = remembering((asked: string) => model.estimate(JSON.parse(asked)));
  return { estimate: (input) => answered(JSON.stringify(input)) };
});

const questionsOf = remembering(questionsAbout);
const sameQuestions = steady<Reckoned['questions']>();
const sameDoubts = steady<Reckoned['garmentQuestions']>();

/** Everything at once; the browser's own timing keeps how long the last one took, for `bench/page.bench.mjs`. */
export function reckon(notebook: Notebook, model: BodyModel | null): Reckoned {
  const start = performance.now();
  const reckoned = reckonedOf(notebook, model);
  performance.clearMeasures(RECKON);
  performance.measure(RECKON, { start });
  return reckoned;
}

function reckonedOf(notebook: Notebook, model: BodyModel | null): Reckoned {
  const input = toSheetInput(notebook, 'mm');
  const { notes } = openEntry(notebook.bodies);
  const profile = profileOf(input.body, model);
  const garment = openEntry(notebook.garments).notes;
  return {
    input,
    profile,
    ...sheetOf(input, notebook, model),
    questions: sameQuestions(questionsOf(notes, toBody(notes), model)),
    garmentQuestions: sameDoubts(garmentDoubts(garment, input.garment, profile)),
  };
}

/** Said a little later than the sheet: nobody waits for it. */
export const next = ({ input, profile }: Reckoned): NextToTake | null => nextToTake(input, profile);

const profileOf = remembering(
  (body: SheetInput['body'], model: BodyModel | null): BodyProfile | null =>
    body && resolveBody(body, { estimate: body.estimate, ...(model && { estimator: estimatorOf(model) }) }),
);

function sheetOf(input: SheetInput, notebook: Notebook, model: BodyModel | null): Pick<Reckoned, 'sheet' | 'cannot'> {
  try {
    return { sheet: composeSheet(input, PREVIEW, options(notebook, model)), cannot: null };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { sheet: null, cannot: TOO_LITTLE.includes(error.code) ? null : error.message };
  }
}

const options = ({ tape }: Notebook, model: BodyModel | null): { tape: Tape; estimator?: Estimator } => ({
  tape,
  ...(model && { estimator: estimatorOf(model) }),
});

/** A sheet to keep or to take along, with an id and a time of its own. */
export function makeSheet(notebook: Notebook, id: string, model: BodyModel | null): TargetSheet {
  return composeSheet(
    toSheetInput(notebook, 'mm'),
    { id, createdAt: new Date().toISOString() },
    options(notebook, model),
  );
}

/** The sheet as it would be with nothing finished yet; null where there is none. */
export function plannedSheet(notebook: Notebook, model: BodyModel | null): TargetSheet | null {
  const planned = { ...notebook, made: {} };
  return sheetOf(toSheetInput(planned, 'mm'), planned, model).sheet;
}
