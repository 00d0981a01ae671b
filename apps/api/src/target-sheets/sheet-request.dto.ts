import { PIECES, PIECE_DIMENSION_NAMES, type DimensionName, type PieceName } from '#fit';
import { SHEET_UNITS, type SheetUnit } from '#target-sheet';
import { BodyDto } from '../bodies/body.dto.ts';
import { DesignDto } from '../design/design.dto.ts';
import { RulesDto } from '../design/rules.dto.ts';
import { FabricDto } from '../fabrics/fabric.dto.ts';
import { GarmentDto } from '../garments/garment.dto.ts';
import { ChoiceField, ListField, ObjectField, TextField } from '../http/fields.ts';
import { DiffersFromSiblings } from '../http/siblings.ts';
import type { Measured } from '../measures/measured.ts';
import { MeasuredField, type Reading } from '../measures/measured-field.ts';
import { LENGTH } from '../measures/quantity-kind.ts';

const READING: Reading = { kind: LENGTH, limits: { min: 1, max: 3000, words: 'from 1 mm to 3 m' } };
const reading = (): Reading => READING;

/** A finished piece as measured: flat, washed, no allowance. */
export class MadePieceDto implements Measured {
  @ChoiceField(PIECES)
  piece!: PieceName;
  @ChoiceField(PIECE_DIMENSION_NAMES)
  @DiffersFromSiblings('piece', 'name')
  name!: DimensionName;
  @MeasuredField('value', LENGTH.units, reading)
  value?: number | null;
  @MeasuredField('unit', LENGTH.units, reading)
  unit?: string | null;
  @MeasuredField('text', LENGTH.units, reading)
  text?: string | null;
}

/** What every request for a sheet says beside body, garment and fabric. */
export class SheetChoicesDto {
  @TextField({ optional: true, max: 120, description: 'What the maker calls the sheet.', example: 'Grey pullover' })
  title?: string | null;
  @ObjectField(() => DesignDto)
  design!: DesignDto;
  @ObjectField(() => RulesDto, {
    optional: true,
    description: 'Numbers in place of rules, by name: see /v1/design-rules.',
  })
  rules?: RulesDto | null;
  @ChoiceField(SHEET_UNITS, { optional: true, default: 'mm', description: 'Of every length in the sheet.' })
  unit?: SheetUnit | null;
}

/** A request that brings everything along; nothing of it is stored. */
export class ComputeSheetDto extends SheetChoicesDto {
  @ObjectField(() => BodyDto, { optional: true })
  body?: BodyDto | null;
  @ObjectField(() => GarmentDto, { optional: true })
  garment?: GarmentDto | null;
  @ObjectField(() => FabricDto)
  fabric!: FabricDto;
  @ListField(() => MadePieceDto, { optional: true, max: 100, description: 'Pieces already made.' })
  made?: MadePieceDto[] | null;
}
