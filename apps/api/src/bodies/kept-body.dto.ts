import { ApiProperty, IntersectionType } from '@nestjs/swagger';
import { Kept } from '../records/kept.dto.ts';
import { BodyDto } from './body.dto.ts';

export class KeptBody extends IntersectionType(Kept, BodyDto) {}

export class BodyPage {
  @ApiProperty({ type: () => KeptBody, isArray: true })
  items!: KeptBody[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}
