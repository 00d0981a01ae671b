import { ApiProperty, type ApiPropertyOptions } from '@nestjs/swagger';
import { LENGTHS, NECKLINES, SILHOUETTES } from '#fit';
import { CONSTRUCTIONS } from '#garment';
import { SHEET_UNITS } from '#target-sheet';
import { CHANGEABLE, inputVersions, type InputName } from './inputs-changed.ts';
import { ComputeSheetDto } from './sheet-request.dto.ts';
import type { WithChanges } from './target-sheets.ts';
import type { SheetEntry } from './target-sheet.repository.ts';

const ID = { type: 'string', format: 'uuid' } as const;
const TIME = { type: 'string', format: 'date-time' } as const;
const CHANGED: ApiPropertyOptions = {
  type: 'array',
  items: { type: 'string', enum: [...CHANGEABLE] },
  description: 'What it was made from and is another now, or gone.',
};

/** A kept sheet in a list. */
class SheetEntryDto {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty(TIME)
  createdAt!: string;
  @ApiProperty({ type: 'string' })
  title!: string;
  @ApiProperty({ type: 'string', enum: [...SHEET_UNITS] })
  unit!: string;
  @ApiProperty({ type: 'string', enum: [...SILHOUETTES] })
  silhouette!: string;
  @ApiProperty({ type: 'string', enum: [...CONSTRUCTIONS] })
  construction!: string;
  @ApiProperty({ type: 'string', enum: [...LENGTHS] })
  length!: string;
  @ApiProperty({ type: 'string', enum: [...NECKLINES] })
  neckline!: string;
  @ApiProperty(CHANGED)
  inputsChanged!: readonly string[];
}

export class SheetPage {
  @ApiProperty({ type: () => SheetEntryDto, isArray: true })
  items!: SheetEntryDto[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}

/** A kept record that a sheet was made from. */
class SheetInputDto {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty({ type: 'integer', description: 'The version the sheet was made from.' })
  version!: number;
  @ApiProperty({ type: 'integer', nullable: true, description: 'The version it is at now; null when it was erased.' })
  currentVersion!: number | null;
}

/** What a kept sheet was made from. */
export class SheetInputsDto {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty({ type: 'string', description: 'Version of the rules it was made with.' })
  rulesVersion!: string;
  @ApiProperty(CHANGED)
  inputsChanged!: readonly string[];
  @ApiProperty({ type: () => SheetInputDto, nullable: true })
  body!: SheetInputDto | null;
  @ApiProperty({
    type: () => SheetInputDto,
    nullable: true,
    description: 'Of `garments`: the one that was said to be the basis, else the first.',
  })
  garment!: SheetInputDto | null;
  @ApiProperty({ type: () => SheetInputDto, isArray: true, description: 'All that fit, in the order of the request.' })
  garments!: SheetInputDto[];
  @ApiProperty({ type: () => SheetInputDto, nullable: true })
  fabric!: SheetInputDto | null;
  @ApiProperty({
    type: () => ComputeSheetDto,
    nullable: true,
    description: 'The inputs as they were: a request that computes it again. Null where the sheet was read in.',
  })
  request!: object | null;
}

/** What a kept sheet was made from and is another now. */
export class InputsChangedDto {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty(CHANGED)
  inputsChanged!: readonly string[];
}

export function sheetEntry({ row, changed }: WithChanges<SheetEntry>): SheetEntryDto {
  return { id: row.id, createdAt: row.createdAt, ...row.summary, inputsChanged: changed };
}

export function sheetInputs(sheet: WithChanges<SheetEntry>): SheetInputsDto {
  const { row, changed } = sheet;
  const [body = null] = sheetInputsOf(sheet, 'body');
  const garments = sheetInputsOf(sheet, 'garment');
  const [fabric = null] = sheetInputsOf(sheet, 'fabric');
  const { id, rulesVersion, request } = row;
  const basis = garments.find((_, place) => request?.garments[place]?.basis);
  const garment = basis ?? garments[0] ?? null;
  return { id, rulesVersion, inputsChanged: changed, body, garment, garments, fabric, request };
}

const sheetInputsOf = ({ row, current }: WithChanges<SheetEntry>, input: InputName): SheetInputDto[] =>
  inputVersions(row, input).flatMap(({ id, version }) =>
    version === null ? [] : [{ id, version, currentVersion: current.get(id) ?? null }],
  );

export const inputsChangedOf = ({ row, changed }: WithChanges<SheetEntry>): InputsChangedDto => ({
  id: row.id,
  inputsChanged: changed,
});
