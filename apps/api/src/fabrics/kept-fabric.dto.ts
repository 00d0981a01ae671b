import { ApiProperty, IntersectionType } from '@nestjs/swagger';
import { Kept } from '../records/kept.dto.ts';
import { FabricDto } from './fabric.dto.ts';

export class KeptFabric extends IntersectionType(Kept, FabricDto) {}

export class FabricPage {
  @ApiProperty({ type: () => KeptFabric, isArray: true })
  items!: KeptFabric[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}
