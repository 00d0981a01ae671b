import { EntitySchema } from 'typeorm';
import type { TargetSheet } from '#target-sheet';
import type { StoredSheetRequest } from './sheet-request.ts';

/** What a list says of a sheet. */
type SheetSummary = Pick<TargetSheet, 'title' | 'unit'> &
  Pick<TargetSheet['design'], 'silhouette' | 'construction' | 'length' | 'neckline'>;

export function summaryOf({ title, unit, design }: TargetSheet): SheetSummary {
  const { silhouette, construction, length, neckline } = design;
  return { title, unit, silhouette, construction, length, neckline };
}

/** A kept garment that a sheet was made from, and the version it was at. */
export interface KeptGarmentVersion {
  readonly id: string;
  readonly version: number;
}

/** A kept sheet: never changed once written. */
export interface TargetSheetRow {
  /** UUID v7; the sheet's own id. */
  id: string;
  makerId: string;
  createdAt: string;
  rulesVersion: string;
  bodyId: string | null;
  bodyVersion: number | null;
  /** In the order of the request. */
  garments: readonly KeptGarmentVersion[];
  fabricId: string | null;
  fabricVersion: number | null;
  summary: SheetSummary;
  /** The snapshot of what it was made from, as entered: a request that computes it again. Null where the sheet was read in. */
  request: StoredSheetRequest | null;
  /** The sheet as JSON text, as it is handed out. */
  sheet: string;
}

const ID = { type: 'varchar', length: 36 } as const;
const INPUT_ID = { ...ID, nullable: true } as const;
const INPUT_VERSION = { type: 'integer', nullable: true } as const;

export const TARGET_SHEET = new EntitySchema<TargetSheetRow>({
  name: 'target_sheet',
  columns: {
    id: { ...ID, primary: true },
    makerId: { ...ID, name: 'maker_id' },
    createdAt: { type: 'varchar', length: 30, name: 'created_at' },
    rulesVersion: { type: 'varchar', length: 40, name: 'rules_version' },
    bodyId: { ...INPUT_ID, name: 'body_id' },
    bodyVersion: { ...INPUT_VERSION, name: 'body_version' },
    garments: { type: 'simple-json' },
    fabricId: { ...INPUT_ID, name: 'fabric_id' },
    fabricVersion: { ...INPUT_VERSION, name: 'fabric_version' },
    summary: { type: 'simple-json' },
    request: { type: 'simple-json', nullable: true },
    sheet: { type: 'text' },
  },
});
