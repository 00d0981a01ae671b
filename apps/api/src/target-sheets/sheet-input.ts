import { bodyFromRecord } from '#body';
import { fabricFromRecord } from '#fabric';
import { designFromRecord, madeFromRecord } from '#fit';
import { sheetGarmentFromRecord, type SheetInput } from '#target-sheet';
import type { SheetRequest } from './sheet-request.ts';

/** A request in the terms of the libs: millimetres, grams, one name for each thing. */
export function sheetInput({ body, garments, fabric, design, made, ...rest }: SheetRequest): SheetInput {
  return {
    ...rest,
    body: body === null ? null : { estimate: body.estimate ?? true, ...bodyFromRecord(body) },
    garments: garments.map(sheetGarmentFromRecord),
    fabric: fabricFromRecord(fabric),
    design: designFromRecord(design),
    made: made.map(madeFromRecord),
  };
}
