import { ApiProperty, IntersectionType } from '@nestjs/swagger';
import { FABRIC_RECORD, GROWTH_RECORD, STRETCH_RECORD } from '#fabric';
import { KeptThickness } from '../measures/kept-thickness.dto.ts';
import { Kept } from '../records/kept.dto.ts';
import { keptRecordDto } from '../records/kept-record-dto.ts';

class KeptStretch extends keptRecordDto(STRETCH_RECORD, {}) {}
class KeptGrowth extends keptRecordDto(GROWTH_RECORD, {}) {}

const NESTED = { thickness: KeptThickness, stretch: KeptStretch, growth: KeptGrowth };

export class KeptFabric extends IntersectionType(Kept, keptRecordDto(FABRIC_RECORD, NESTED)) {}

export class FabricPage {
  @ApiProperty({ type: () => KeptFabric, isArray: true })
  items!: KeptFabric[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}
