import { SHEET_UNITS, type SheetUnit } from '#target-sheet';
import { ChoiceField } from '../http/fields.ts';

/** In which unit a kept sheet is wanted. */
export class SheetUnitQuery {
  @ChoiceField(SHEET_UNITS, {
    optional: true,
    description: 'Of every length in the answer; default: the unit it was kept in.',
  })
  unit?: SheetUnit | null;
}
