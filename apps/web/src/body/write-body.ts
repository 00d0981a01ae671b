import type { BodyDimension } from '#body';
import { updateCollection } from '../notebook/kinds.ts';
import type { BodyNotes } from '../notebook/notebook.ts';
import { withNotes } from '../notebook/collection.ts';
import type { Typed } from '../notebook/typed.ts';
import { updateNotebook } from '../state/notebook.ts';
import type { ValueQuestion } from '../compute/value-question.ts';

/** The Swedish locale formats a day as YYYY-MM-DD. */
const DAY = new Intl.DateTimeFormat('sv');

export const writeBody = (how: (notes: BodyNotes) => BodyNotes): void =>
  updateNotebook((notebook) => updateCollection(notebook, 'bodies', (collection) => withNotes(collection, how)));

export const writeMeasure = (dimension: BodyDimension, typed: Typed): void =>
  writeBody((it) => {
    const { [dimension]: before, ...rest } = it.measures;
    if (typed.text === '') return { ...it, measures: rest };
    return { ...it, measures: { ...rest, [dimension]: { ...before, ...typed, on: DAY.format(new Date()) } } };
  });

export const repairMeasures = (to: ValueQuestion<BodyDimension>['repairs'][number]['to']): void => {
  for (const [dimension, typed] of Object.entries(to)) writeMeasure(dimension as BodyDimension, typed);
};

/** Confirms a questioned value. */
export const confirmMeasure = (dimension: BodyDimension): void =>
  writeBody((it) => {
    const measure = it.measures[dimension];
    if (measure === undefined) return it;
    return { ...it, measures: { ...it.measures, [dimension]: { ...measure, confirmed: measure.text } } };
  });
