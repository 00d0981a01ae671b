import { ApiProperty, getSchemaPath } from '@nestjs/swagger';
import { KeptBody } from '../bodies/kept-body.dto.ts';
import { KeptFabric } from '../fabrics/kept-fabric.dto.ts';
import { KeptGarment } from '../garments/kept-garment.dto.ts';
import { KeptPlanner } from '../hand-off/planners/kept-planner.dto.ts';
import { KeptReadKey } from '../hand-off/read-keys/read-key.dto.ts';
import { FAILURES } from '../hand-off/delivery/failure.ts';
import { HAND_OFF_STATES } from '../hand-off/outbox/hand-off.entity.ts';
import { SHEET_SCHEMA } from '../target-sheets/api-sheet.ts';
import { ComputeSheetDto } from '../target-sheets/sheet-request.dto.ts';

/** The versions of exports that can be read in; the last is written. */
export const EXPORT_VERSIONS = ['2.0', '3.0'] as const;

const ID = { type: 'string', format: 'uuid' } as const;
const TIME = { type: 'string', format: 'date-time', description: 'In UTC, to the millisecond.' } as const;

/** Id and version of a record that a sheet was made from. */
class ExportedInputDto {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty({ type: 'integer', minimum: 1 })
  version!: number;
}

/** Ids and versions of the records that a sheet was made from. */
class ExportedInputsDto {
  @ApiProperty({ ...ID, nullable: true })
  bodyId!: string | null;
  @ApiProperty({ type: 'integer', nullable: true, minimum: 1 })
  bodyVersion!: number | null;
  @ApiProperty({ type: () => ExportedInputDto, isArray: true, description: 'In the order of the request.' })
  garments!: readonly ExportedInputDto[];
  @ApiProperty({ ...ID, nullable: true })
  fabricId!: string | null;
  @ApiProperty({ type: 'integer', nullable: true, minimum: 1 })
  fabricVersion!: number | null;
}

/** One attempt at a hand-off. */
class ExportedAttemptDto {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty(TIME)
  at!: string;
  @ApiProperty({ type: 'integer', minimum: 0 })
  milliseconds!: number;
  @ApiProperty({ type: 'integer', nullable: true })
  status!: number | null;
  @ApiProperty({ type: 'string', nullable: true, enum: [...Object.keys(FAILURES), null] })
  failure!: string | null;
  @ApiProperty({ type: 'string' })
  answer!: string;
}

class ExportedSheetDto {
  @ApiProperty({
    type: () => ComputeSheetDto,
    nullable: true,
    description: 'What it was made from: a request that computes it again. Null where it was read in.',
  })
  request!: object | null;
  @ApiProperty({ allOf: [{ $ref: getSchemaPath(SHEET_SCHEMA) }] })
  sheet!: object;
  @ApiProperty({ type: () => ExportedInputsDto, description: 'The records it was made from, as far as it was.' })
  inputs!: ExportedInputsDto;
}

/** A hand-off with every attempt at it. */
class ExportedHandOffDto {
  @ApiProperty(ID)
  id!: string;
  @ApiProperty(ID)
  plannerId!: string;
  @ApiProperty(ID)
  targetSheetId!: string;
  @ApiProperty(TIME)
  createdAt!: string;
  @ApiProperty({ type: 'string', maxLength: 60 })
  contentType!: string;
  @ApiProperty({ type: 'string', description: 'What is sent, exactly.' })
  body!: string;
  @ApiProperty({ type: 'string', enum: [...HAND_OFF_STATES] })
  state!: string;
  @ApiProperty({ type: 'integer', minimum: 0, description: 'How often it has been tried.' })
  tries!: number;
  @ApiProperty({ ...TIME, nullable: true })
  nextTryAt!: string | null;
  @ApiProperty({ ...TIME, description: 'After this it is given up.' })
  tryUntil!: string;
  @ApiProperty({ type: 'string', nullable: true, maxLength: 200 })
  idempotencyKey!: string | null;
  @ApiProperty({ type: 'string', maxLength: 64, description: 'Of the request, to know it again by.' })
  fingerprint!: string;
  @ApiProperty({ type: () => ExportedAttemptDto, isArray: true, description: 'The oldest first.' })
  attempts!: ExportedAttemptDto[];
}

/** All that is kept of a maker. */
export class ExportDto {
  @ApiProperty({ type: 'string', enum: ['easewright/export'] })
  format!: string;
  @ApiProperty({ type: 'string', enum: [...EXPORT_VERSIONS], description: 'An export of 2.0 is read in too.' })
  version!: string;
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
  @ApiProperty({ type: () => ExportedHandOffDto, isArray: true })
  handOffs!: object[];
}

/** What was read in. */
export class ImportedDto {
  @ApiProperty({ type: 'object', additionalProperties: { type: 'integer' }, description: 'How many of each.' })
  imported!: Readonly<Record<string, number>>;
  @ApiProperty({ type: 'string', isArray: true, description: 'What has to be done yet.' })
  notes!: string[];
}
