import { IntersectionType } from '@nestjs/swagger';
import { MADE_PIECE_RECORD } from '#fit';
import { SHEET_UNITS, type SheetUnit } from '#target-sheet';
import { BodyDto } from '../bodies/body.dto.ts';
import { DesignDto } from '../design/design.dto.ts';
import { RulesDto } from '../design/rules.dto.ts';
import { FabricDto } from '../fabrics/fabric.dto.ts';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { ChoiceField, ListField, ObjectField, TextField } from '../http/fields.ts';
import { recordDto } from '../records/record-dto.ts';
import { GarmentsDto, garmentsProblems } from './garments.dto.ts';

/** A finished piece as measured: flat, washed, no allowance. */
export class MadePieceDto extends recordDto(MADE_PIECE_RECORD, {}, ['piece', 'name']) {}

/** What every request for a sheet says beside body, garments and fabric. */
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
export class ComputeSheetDto extends IntersectionType(SheetChoicesDto, GarmentsDto) implements CrossFieldRules {
  @ObjectField(() => BodyDto, { optional: true })
  body?: BodyDto | null;
  @ObjectField(() => FabricDto)
  fabric!: FabricDto;
  @ListField(() => MadePieceDto, { optional: true, max: 100, description: 'Pieces already made.' })
  made?: MadePieceDto[] | null;

  problems() {
    return garmentsProblems(this);
  }
}
