import { errorText } from '#advice-text';
import { BODY_DIMENSIONS, type BodyModel, type BodyProfile } from '#body';
import { favouritesOf, rulesWith, type ResolvedWearer } from '#fit';
import { DomainError } from '#measure';
import { composeSheet, wearerOf, type SheetInput, type TargetSheet } from '#target-sheet';
import type { Notebook } from '../notebook/notebook.ts';
import { openEntry } from '../notebook/collection.ts';
import { garmentQuestions } from './garment-questions.ts';
import { adviseNextMeasure } from './next-measure.ts';
import { bodyQuestions } from './body-questions.ts';
import { warmUp } from './warm-up.ts';
import { memoizeLast } from './memoize-last.ts';
import type { OpenQuestions, Computation } from './computation.ts';
import { toBody } from './to-body.ts';
import { toSheetInput } from './to-sheet-input.ts';

export { loadBodyModel } from '#body';

/** Runs the computation on invented notebooks while the browser is idle. */
export const warmUpCompute = (model: BodyModel | null): void =>
  warmUp((notebook) => {
    const { next, ofBody, ofGarment } = openQuestions(computationOf(notebook, model), notebook, model);
    for (const question of [next, ofBody, ofGarment]) question();
  });

/** A preview has neither an id nor a time; only a kept sheet does. */
const PREVIEW = { id: '', createdAt: '' };

/** The name of the entry in the performance timeline. */
const TIMING = 'compute';

/** Errors of an incomplete notebook, which are not shown as errors. */
const INCOMPLETE = ['garment-missing', 'garment-length-missing', 'favourites-too-few'];

const questionsOf = memoizeLast(bodyQuestions);

/** Computes a notebook. The browser's performance timeline records the duration, for `bench/page.bench.mjs`. */
export function compute(notebook: Notebook, model: BodyModel | null): Computation {
  const start = performance.now();
  const computation = computationOf(notebook, model);
  performance.clearMeasures(TIMING);
  performance.measure(TIMING, { start });
  return computation;
}

function computationOf(notebook: Notebook, model: BodyModel | null): Computation {
  const input = toSheetInput(notebook, 'mm');
  try {
    const wearer = resolved(input, model);
    const profile = isKnown(wearer.body) ? wearer.body : null;
    const found = profile === null ? { sheet: null, cannot: null } : sheetOf(input, wearer, notebook);
    return { input, wearer, profile, favourites: favouritesOf(wearer, rulesWith(input.rules)), ...found };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { input, wearer: null, profile: null, favourites: null, sheet: null, cannot: errorText(error) };
  }
}

const isKnown = ({ values }: BodyProfile): boolean => Object.keys(values).length > 0;

/** The questions about a computed notebook. */
export function openQuestions(computation: Computation, notebook: Notebook, model: BodyModel | null): OpenQuestions {
  const body = openEntry(notebook.bodies).notes;
  const garment = openEntry(notebook.garments).notes;
  return {
    next: () => adviseNextMeasure(computation),
    ofBody: () => questionsOf(body, toBody(body), model),
    ofGarment: () => garmentQuestions(garment, computation, notebook.tape),
  };
}

const resolved = (input: SheetInput, model: BodyModel | null): ResolvedWearer =>
  lastWearer(input.body, input.garments, input.rules, model);

/** The rest of the input says nothing of the wearer. */
const lastWearer = memoizeLast(
  (
    body: SheetInput['body'],
    garments: SheetInput['garments'],
    rules: SheetInput['rules'],
    model: BodyModel | null,
  ): ResolvedWearer => wearerOf({ body, garments, rules }, model, BODY_DIMENSIONS),
);

function sheetOf(input: SheetInput, wearer: ResolvedWearer, { tape }: Notebook): Pick<Computation, 'sheet' | 'cannot'> {
  try {
    return { sheet: composeSheet(input, PREVIEW, { wearer, tape }), cannot: null };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { sheet: null, cannot: INCOMPLETE.includes(error.code) ? null : errorText(error) };
  }
}

/** A sheet to keep or export, with its own id and time. */
export function makeSheet(notebook: Notebook, id: string, model: BodyModel | null): TargetSheet {
  const input = toSheetInput(notebook, 'mm');
  const meta = { id, createdAt: new Date().toISOString() };
  return composeSheet(input, meta, { wearer: resolved(input, model), tape: notebook.tape });
}

/** The sheet without the finished pieces; null where there is none. */
export const plannedSheet = (notebook: Notebook, model: BodyModel | null): TargetSheet | null =>
  computationOf({ ...notebook, made: {} }, model).sheet;
