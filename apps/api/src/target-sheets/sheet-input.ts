import type { SheetInput } from '#target-sheet';
import { bodyInput } from '../bodies/body-input.ts';
import { designInput } from '../design/design-input.ts';
import { fabricInput } from '../fabrics/fabric-input.ts';
import { garmentInput } from '../garments/garment-input.ts';
import { mmOf } from '../measures/read-entered.ts';
import type { SheetRequest } from './sheet-request.ts';

/** A request in the terms of the libs: millimetres, grams, one name for each thing. */
export function sheetInput(request: SheetRequest): SheetInput {
  const { title, body, garment, fabric, design, made, rules, unit } = request;
  return {
    title,
    body: body === null ? null : { estimate: body.estimate, ...bodyInput(body) },
    garment: garment === null ? null : garmentInput(garment),
    fabric: fabricInput(fabric),
    design: designInput(design),
    made: made.map((each) => ({ piece: each.piece, name: each.name, value: mmOf(each) ?? 0 })),
    rules,
    unit,
  };
}
