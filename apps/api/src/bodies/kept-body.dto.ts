import { ApiProperty, IntersectionType } from '@nestjs/swagger';
import { BODY_MEASURE_RECORD, BODY_RECORD, BODY_SIZE_RECORD } from '#body';
import { Kept } from '../records/kept.dto.ts';
import { keptRecordDto } from '../records/kept-record-dto.ts';

class KeptBodyMeasure extends keptRecordDto(BODY_MEASURE_RECORD, {}) {}

class KeptBodySize extends keptRecordDto(BODY_SIZE_RECORD, {}) {}

const NESTED = { measures: KeptBodyMeasure, size: KeptBodySize };

export class KeptBody extends IntersectionType(Kept, keptRecordDto(BODY_RECORD, NESTED)) {}

export class BodyPage {
  @ApiProperty({ type: () => KeptBody, isArray: true })
  items!: KeptBody[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}
