import type { Body } from '#body';
import type { Garment } from '#garment';
import type { SheetGarment, SheetInput, SheetUnit } from '#target-sheet';
import { openEntry } from '../notebook/collection.ts';
import type { Notebook } from '../notebook/notebook.ts';
import { garmentsOfBody } from '../notebook/garments-of-body.ts';
import { memoizeEach } from './memoize-each.ts';
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

const asBasis = memoizeEach((garment: Garment): SheetGarment => ({ ...garment, basis: true }));
const asEvidence = memoizeEach((garment: Garment): SheetGarment => ({ ...garment, basis: false }));
/** The same list for the same garments. */
const listed = memoizeLast((...garments: readonly SheetGarment[]) => garments);

/** The sweaters that count for the body, the open one as the basis. */
function garmentsFrom(notebook: Notebook): readonly SheetGarment[] {
  const { key: open } = openEntry(notebook.garments);
  const garments = garmentsOfBody(notebook).flatMap(({ key, notes }) => {
    const garment = toGarment(notes);
    return garment === null ? [] : [key === open ? asBasis(garment) : asEvidence(garment)];
  });
  return listed(...garments);
}

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
