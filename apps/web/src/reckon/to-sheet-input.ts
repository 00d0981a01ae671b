import type { Body } from '#body';
import type { SheetInput, SheetUnit } from '#target-sheet';
import { openEntry } from '../notebook/shelf.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { remembering } from './remembering.ts';
import { toBody } from './to-body.ts';
import { toDesign } from './to-design.ts';
import { toFabric } from './to-fabric.ts';
import { toGarment } from './to-garment.ts';
import { toMade } from './to-made.ts';

/** A body whose other measures are guessed; null while nothing is known of it. */
const guessedFrom = remembering((body: Body): SheetInput['body'] =>
  body.measures.length === 0 && body.ageYears === null ? null : { ...body, estimate: true },
);

/** From what is written to what a sheet is made of: mm and g inside. */
export function toSheetInput(notebook: Notebook, unit: SheetUnit): SheetInput {
  const { body } = toBody(openEntry(notebook.bodies).notes);
  return {
    title: notebook.design.title.trim(),
    body: guessedFrom(body),
    garment: toGarment(openEntry(notebook.garments).notes),
    fabric: toFabric(openEntry(notebook.yarns).notes).input,
    design: toDesign(notebook.design),
    made: toMade(notebook.made),
    rules: notebook.design.rules,
    unit,
  };
}
