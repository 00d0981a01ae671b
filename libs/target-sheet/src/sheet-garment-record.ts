import { GARMENT_RECORD, garmentFromRecord } from '#garment';
import type { RecordOf, RecordSchema, StoredRecord } from '#measure';
import type { SheetGarment } from './sheet-input.ts';

/** How many garments that fit one sheet takes. */
export const MOST_GARMENTS = 20;

/** A garment that fits, as one of those that a sheet is made from. */
export const SHEET_GARMENT_RECORD = {
  ...GARMENT_RECORD,
  basis: {
    kind: 'yes-no',
    optional: true,
    default: false,
    description:
      'Whether the design is based on this one; of one at most. Default: the first with a chest width, else the first.',
  },
} as const satisfies RecordSchema;

/** Such a garment as a maker gives it, and as it is stored. */
export type SheetGarmentRecord = RecordOf<typeof SHEET_GARMENT_RECORD>;
export type StoredSheetGarment = StoredRecord<typeof SHEET_GARMENT_RECORD>;

/** The garment in mm. @throws DomainError where a size cannot be read */
export const sheetGarmentFromRecord = (record: SheetGarmentRecord): SheetGarment => ({
  ...garmentFromRecord(record),
  basis: record.basis ?? false,
});
