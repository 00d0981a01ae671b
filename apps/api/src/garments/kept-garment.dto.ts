import { ApiProperty, IntersectionType } from '@nestjs/swagger';
import { Kept } from '../records/kept.dto.ts';
import { GarmentDto } from './garment.dto.ts';

export class KeptGarment extends IntersectionType(Kept, GarmentDto) {}

export class GarmentPage {
  @ApiProperty({ type: () => KeptGarment, isArray: true })
  items!: KeptGarment[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}
