import { ApiProperty, getSchemaPath } from '@nestjs/swagger';
import { KeptBody } from '../bodies/kept-body.dto.ts';
import { KeptFabric } from '../fabrics/kept-fabric.dto.ts';
import { KeptGarment } from '../garments/kept-garment.dto.ts';
import { KeptPlanner } from '../hand-off/planners/kept-planner.dto.ts';
import { KeptReadKey } from '../hand-off/read-keys/read-key.dto.ts';
import { SHEET_SCHEMA } from '../target-sheets/api-sheet.ts';
import { ComputeSheetDto } from '../target-sheets/sheet-request.dto.ts';

class ExportedSheetDto {
  @ApiProperty({
    type: () => ComputeSheetDto,
    nullable: true,
    description: 'What it was made from: a request that computes it again. Null where it was read in.',
  })
  request!: object | null;
  @ApiProperty({ allOf: [{ $ref: getSchemaPath(SHEET_SCHEMA) }] })
  sheet!: object;
}

/** All that is kept of a maker. */
export class ExportDto {
  @ApiProperty({ type: 'string', enum: ['easewright/export'] })
  format!: string;
  @ApiProperty({ type: 'string', example: '1.1' })
  version!: string;
  @ApiProperty({ type: 'string', format: 'date-time' })
  exportedAt!: string;
  @ApiProperty({ type: () => KeptBody, isArray: true })
  bodies!: object[];
  @ApiProperty({ type: () => KeptGarment, isArray: true })
  garments!: object[];
  @ApiProperty({ type: () => KeptFabric, isArray: true })
  fabrics!: object[];
  @ApiProperty({ type: () => ExportedSheetDto, isArray: true })
  targetSheets!: ExportedSheetDto[];
  @ApiProperty({ type: () => KeptPlanner, isArray: true, description: 'Without their signing secrets.' })
  planners!: KeptPlanner[];
  @ApiProperty({ type: () => KeptReadKey, isArray: true, description: 'Without the keys themselves.' })
  readKeys!: KeptReadKey[];
}
