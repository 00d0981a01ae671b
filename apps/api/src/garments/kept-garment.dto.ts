import { ApiProperty, IntersectionType } from '@nestjs/swagger';
import { GARMENT_MEASURE_RECORD, GARMENT_RECORD, LAYER_RECORD, WEARS_RECORD } from '#garment';
import { KeptThickness } from '../measures/kept-thickness.dto.ts';
import { Kept } from '../records/kept.dto.ts';
import { keptRecordDto, keptSparseDto } from '../records/kept-record-dto.ts';

class KeptGarmentMeasure extends keptRecordDto(GARMENT_MEASURE_RECORD, {}) {}
class KeptLayer extends keptRecordDto(LAYER_RECORD, { thickness: KeptThickness }) {}
class KeptWears extends keptSparseDto(WEARS_RECORD) {}

const NESTED = { measures: KeptGarmentMeasure, thickness: KeptThickness, layer: KeptLayer, wears: KeptWears };

export class KeptGarment extends IntersectionType(Kept, keptRecordDto(GARMENT_RECORD, NESTED)) {}

export class GarmentPage {
  @ApiProperty({ type: () => KeptGarment, isArray: true })
  items!: KeptGarment[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}
