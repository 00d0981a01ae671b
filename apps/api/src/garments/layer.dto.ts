import { LAYER_RECORD } from '#garment';
import { ThicknessDto } from '../measures/length.dto.ts';
import { recordDto } from '../records/record-dto.ts';

/** What is worn beneath, beyond a shirt. */
export class LayerDto extends recordDto(LAYER_RECORD, { thickness: ThicknessDto }) {}
