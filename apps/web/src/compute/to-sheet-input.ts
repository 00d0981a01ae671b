import type { Body } from '#body';
import type { SheetInput, SheetUnit } from '#target-sheet';
import { openEntry } from '../notebook/collection.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { memoizeLast } from './memoize-last.ts';
import { toBody } from './to-body.ts';
import { toDesign } from './to-design.ts';
import { toFabric } from './to-fabric.ts';
import { toGarments } from './to-garment.ts';
import { toMade } from './to-made.ts';

/** A body, and whether its other measures are guessed; null while nothing is known of it. */
const guessedFrom = memoizeLast((body: Body, estimate: boolean): SheetInput['body'] =>
  body.measures.length === 0 && body.ageYears === null ? null : { ...body, estimate },
);

/** From what is written to what a sheet is made of: mm and g inside. */
export function toSheetInput(notebook: Notebook, unit: SheetUnit): SheetInput {
  const notes = openEntry(notebook.bodies).notes;
  return {
    title: notebook.design.title.trim(),
    body: guessedFrom(toBody(notes).body, notes.skipped !== 'open'),
    garments: toGarments(notebook.garments, notebook.bodies),
    fabric: toFabric(openEntry(notebook.yarns).notes).input,
    design: toDesign(notebook.design),
    made: toMade(notebook.made),
    rules: notebook.design.rules,
    unit,
  };
}
