import { errorText } from '#advice-text';
import { resolveBody, type BodyModel, type BodyProfile } from '#body';
import { DomainError } from '#measure';
import { composeSheet, type SheetInput, type TargetSheet } from '#target-sheet';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import { garmentQuestions } from './garment-questions.ts';
import { adviseNextMeasure } from './next-measure.ts';
import { bodyQuestions } from './body-questions.ts';
import { rehearse } from './warm-up.ts';
import { memoizeLast, steady } from './memoize-last.ts';
import type { OpenQuestions, Computation } from './computation.ts';
import { toBody } from './to-body.ts';
import { toSheetInput } from './to-sheet-input.ts';

export { loadBodyModel } from '#body';

/** Goes through it some dozen times while the browser rests. */
export const rehearsed = (model: BodyModel | null): void =>
  rehearse((notebook) => {
    const { next, ofBody, ofGarment } = openQuestions(computationOf(notebook, model), notebook, model);
    for (const ask of [next, ofBody, ofGarment]) ask();
  });

/** The preview is the computation; only a sheet that is kept has an id and a time. */
const PREVIEW = { id: '', createdAt: '' };

const RECKON = 'reckon';

/** What a maker with an empty page has not written yet; nothing to complain about. */
const TOO_LITTLE = ['body-missing', 'garment-missing', 'garment-chest-width-missing'];

const questionsOf = memoizeLast(bodyQuestions);
const sameQuestions = steady<ReturnType<OpenQuestions['ofBody']>>();
const sameDoubts = steady<ReturnType<OpenQuestions['ofGarment']>>();

/** Everything at once; the browser's own timing keeps how long the last one took, for `bench/page.bench.mjs`. */
export function reckon(notebook: Notebook, model: BodyModel | null): Computation {
  const start = performance.now();
  const computation = computationOf(notebook, model);
  performance.clearMeasures(RECKON);
  performance.measure(RECKON, { start });
  return computation;
}

function computationOf(notebook: Notebook, model: BodyModel | null): Computation {
  const input = toSheetInput(notebook, 'mm');
  const profile = profileOf(input.body, model);
  return { input, profile, ...sheetOf(input, profile, notebook) };
}

/** What there is to ask about what was reckoned. */
export function openQuestions(computation: Computation, notebook: Notebook, model: BodyModel | null): OpenQuestions {
  const { input, profile } = computation;
  const body = openEntry(notebook.bodies).notes;
  const garment = openEntry(notebook.garments).notes;
  return {
    next: () => adviseNextMeasure(computation),
    ofBody: () => sameQuestions(questionsOf(body, toBody(body), model)),
    ofGarment: () => sameDoubts(garmentQuestions(garment, input.garment, profile)),
  };
}

const profileOf = memoizeLast(
  (body: SheetInput['body'], model: BodyModel | null): BodyProfile | null =>
    body && resolveBody(body, { estimate: body.estimate, ...(model && { estimator: model }) }),
);

function sheetOf(
  input: SheetInput,
  profile: BodyProfile | null,
  { tape }: Notebook,
): Pick<Computation, 'sheet' | 'cannot'> {
  try {
    return { sheet: composeSheet(input, PREVIEW, { profile, tape }), cannot: null };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { sheet: null, cannot: TOO_LITTLE.includes(error.code) ? null : errorText(error) };
  }
}

/** A sheet to keep or to take along, with an id and a time of its own. */
export function makeSheet(notebook: Notebook, id: string, model: BodyModel | null): TargetSheet {
  const input = toSheetInput(notebook, 'mm');
  const meta = { id, createdAt: new Date().toISOString() };
  return composeSheet(input, meta, { profile: profileOf(input.body, model), tape: notebook.tape });
}

/** The sheet as it would be with nothing finished yet; null where there is none. */
export const plannedSheet = (notebook: Notebook, model: BodyModel | null): TargetSheet | null =>
  computationOf({ ...notebook, made: {} }, model).sheet;
