import { DomainError } from '#measure';
import type { TargetSheet } from '#target-sheet';

/** A garment that would have to be smaller than nothing somewhere is refused with the measure that cannot be. @throws DomainError `garment-impossible` */
export function refuseImpossible(sheet: TargetSheet): TargetSheet {
  const all = [...sheet.assembled, ...sheet.pieces.flatMap((piece) => piece.dimensions)];
  const wrong = all.find(({ value }) => value !== null && !(value >= 0));
  if (wrong === undefined) return sheet;
  throw new DomainError(
    'garment-impossible',
    `No garment can be made so: its ${wrong.name.replaceAll('-', ' ')} would be less than nothing. Choose more ease, or check the measures it is made from.`,
    '/design',
  );
}
