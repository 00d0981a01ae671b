import type { DimensionName, PieceName } from '#fit';
import type { SheetUnit } from '#target-sheet';
import { bodyDocument, type BodyDocument } from '../bodies/body-document.ts';
import { designDocument, type DesignDocument } from '../design/design-document.ts';
import type { RulesDto } from '../design/rules.dto.ts';
import { fabricDocument, type FabricDocument } from '../fabrics/fabric-document.ts';
import { garmentDocument, type GarmentDocument } from '../garments/garment-document.ts';
import { lengthDocument, type LengthDocument } from '../measures/measured-document.ts';
import type { ComputeSheetDto, MadePieceDto, SheetChoicesDto } from './sheet-request.dto.ts';

export interface MadePieceDocument extends LengthDocument {
  readonly piece: PieceName;
  readonly name: DimensionName;
}

/** The choices of a request, with what was left out said plainly. */
export interface SheetChoices {
  readonly title: string;
  readonly design: DesignDocument;
  readonly made: readonly MadePieceDocument[];
  readonly rules: Readonly<Record<string, number>>;
  readonly unit: SheetUnit;
}

/** Everything a sheet is made from, as it was entered: what is kept beside a sheet, and what can be sent to compute it again. */
export interface SheetRequest extends SheetChoices {
  readonly body: BodyDocument | null;
  readonly garment: GarmentDocument | null;
  readonly fabric: FabricDocument;
}

export function sheetRequest(dto: ComputeSheetDto): SheetRequest {
  return {
    body: dto.body == null ? null : bodyDocument(dto.body),
    garment: dto.garment == null ? null : garmentDocument(dto.garment),
    fabric: fabricDocument(dto.fabric),
    ...sheetChoices(dto, dto.made ?? []),
  };
}

export function sheetChoices(dto: SheetChoicesDto, made: readonly MadePieceDto[]): SheetChoices {
  return {
    title: dto.title ?? '',
    design: designDocument(dto.design),
    made: made.map((each) => ({ piece: each.piece, name: each.name, ...lengthDocument(each) })),
    rules: saidRules(dto.rules ?? {}),
    unit: dto.unit ?? 'mm',
  };
}

export function saidRules(rules: RulesDto): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(rules).flatMap(([name, value]) => (value == null ? [] : [[name, value]])));
}
