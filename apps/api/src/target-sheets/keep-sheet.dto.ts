import { IdField, ListField, ObjectField, TextField, TextListField } from '../http/fields.ts';
import { FabricDto } from '../fabrics/fabric.dto.ts';
import { MadePieceDto, SheetChoicesDto } from './sheet-request.dto.ts';

/** A request for a sheet from kept records; the sheet is kept too. */
export class KeepSheetDto extends SheetChoicesDto {
  @IdField({ optional: true, description: 'Of a kept body.' })
  bodyId?: string | null;
  @IdField({ optional: true, description: 'Of a kept garment that fits.' })
  garmentId?: string | null;
  @IdField({ description: 'Of a kept fabric.' })
  fabricId!: string;
  @ListField(() => MadePieceDto, { optional: true, max: 100, description: 'Pieces already made.' })
  made?: MadePieceDto[] | null;
}

/** A request for one design in many sizes; nothing of it is stored. */
export class RunSheetsDto extends SheetChoicesDto {
  @TextField({ max: 60, description: 'Id of a published table: see /v1/sizes.', example: 'craft-yarn-council-woman' })
  table!: string;
  @TextListField({
    optional: true,
    max: 40,
    longest: 20,
    description: 'Sizes of the table; default: all.',
    example: ['S', 'M'],
  })
  sizes?: string[] | null;
  @ObjectField(() => FabricDto)
  fabric!: FabricDto;
}
