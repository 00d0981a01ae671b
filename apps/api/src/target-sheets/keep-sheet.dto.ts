import { MOST_GARMENTS, SHEET_GARMENT_RECORD } from '#target-sheet';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { IdField, ListField, ObjectField, TextField, TextListField, YesNoField } from '../http/fields.ts';
import { UniqueAmongItems } from '../http/unique-items.ts';
import { eitherForm, twoBases } from './garments.dto.ts';
import type { InputIds } from './target-sheets.ts';
import { FabricDto } from '../fabrics/fabric.dto.ts';
import { MadePieceDto, SheetChoicesDto } from './sheet-request.dto.ts';

/** A kept garment that fits. */
class GarmentToUseDto {
  @UniqueAmongItems('id')
  @IdField({ description: 'Of a kept garment.' })
  id!: string;
  @YesNoField({ optional: true, default: false, description: SHEET_GARMENT_RECORD.basis.description })
  basis?: boolean | null;
}

/** A request for a sheet from kept records; the sheet is kept too. */
export class KeepSheetDto extends SheetChoicesDto implements CrossFieldRules {
  @IdField({ optional: true, description: 'Of a kept body.' })
  bodyId?: string | null;
  @IdField({
    optional: true,
    description: 'Of a kept garment that fits, and is the basis: short for `garments` with it alone.',
  })
  garmentId?: string | null;
  @ListField(() => GarmentToUseDto, { optional: true, max: MOST_GARMENTS, description: 'All that fit.' })
  garments?: GarmentToUseDto[] | null;
  @IdField({ description: 'Of a kept fabric.' })
  fabricId!: string;
  @ListField(() => MadePieceDto, { optional: true, max: 100, description: 'Pieces already made.' })
  made?: MadePieceDto[] | null;

  problems() {
    const { garmentId, garments } = this;
    return [...(garmentId != null && garments != null ? [eitherForm('/garmentId')] : []), ...twoBases(garments ?? [])];
  }
}

/** The kept records that such a request names. */
export const inputIds = ({ bodyId, garmentId, garments, fabricId }: KeepSheetDto): InputIds => ({
  body: bodyId ?? null,
  garments:
    garmentId == null
      ? (garments ?? []).map(({ id, basis }, place) => ({
          id,
          basis: basis ?? false,
          pointer: `/garments/${place}/id`,
        }))
      : [{ id: garmentId, basis: true, pointer: '/garmentId' }],
  fabric: fabricId,
});

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
