import { BODY_RECORD, type BodyRecord, type StoredBody } from '#body';
import { FABRIC_RECORD, type FabricRecord, type StoredFabric } from '#fabric';
import {
  DESIGN_RECORD,
  MADE_PIECE_RECORD,
  type DesignRecord,
  type MadePieceRecord,
  type StoredDesign,
  type StoredMadePiece,
} from '#fit';
import { storedRecord } from '#measure';
import { SHEET_GARMENT_RECORD, type SheetGarmentRecord, type SheetUnit, type StoredSheetGarment } from '#target-sheet';
import type { RulesDto } from '../design/rules.dto.ts';
import { garmentsOf } from './garments.dto.ts';
import type { ComputeSheetDto, SheetChoicesDto } from './sheet-request.dto.ts';

/** The choices of a request: everything but body, garments and fabric. */
export interface SheetChoices {
  readonly title: string;
  readonly design: DesignRecord;
  readonly made: readonly MadePieceRecord[];
  readonly rules: Readonly<Record<string, number>>;
  readonly unit: SheetUnit;
}

/** Everything a sheet is made from, as it was entered. */
export interface SheetRequest extends SheetChoices {
  readonly body: BodyRecord | null;
  readonly garments: readonly SheetGarmentRecord[];
  readonly fabric: FabricRecord;
}

/** What is kept beside a sheet: the same with what was left out filled in. Sent again, it computes the sheet again. */
export interface StoredSheetRequest extends SheetRequest {
  readonly body: StoredBody | null;
  readonly garments: readonly StoredSheetGarment[];
  readonly fabric: StoredFabric;
  readonly design: StoredDesign;
  readonly made: readonly StoredMadePiece[];
}

export function sheetRequest(dto: ComputeSheetDto): SheetRequest {
  const { body, fabric, made } = dto;
  return { body: body ?? null, garments: garmentsOf(dto), fabric, ...sheetChoices(dto, made ?? []) };
}

export function sheetChoices(dto: SheetChoicesDto, made: readonly MadePieceRecord[]): SheetChoices {
  return {
    title: dto.title ?? '',
    design: dto.design,
    made,
    rules: saidRules(dto.rules ?? {}),
    unit: dto.unit ?? 'mm',
  };
}

export function saidRules(rules: RulesDto): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(rules).flatMap(([name, value]) => (value == null ? [] : [[name, value]])));
}

export function storedSheetRequest({
  body,
  garments,
  fabric,
  design,
  made,
  ...rest
}: SheetRequest): StoredSheetRequest {
  return {
    ...rest,
    body: body && storedRecord(BODY_RECORD, body),
    garments: garments.map((garment) => storedRecord(SHEET_GARMENT_RECORD, garment)),
    fabric: storedRecord(FABRIC_RECORD, fabric),
    design: storedRecord(DESIGN_RECORD, design),
    made: made.map((piece) => storedRecord(MADE_PIECE_RECORD, piece)),
  };
}
