import { LAYER_SLEEVES, type Layer } from '#garment';
import { ChoiceField, ObjectField } from '../http/fields.ts';
import { ThicknessDto } from '../measures/length.dto.ts';

/** What is worn beneath, beyond a shirt. */
export class LayerDto {
  @ObjectField(() => ThicknessDto)
  thickness!: ThicknessDto;
  @ChoiceField(LAYER_SLEEVES, { description: 'How far its sleeves reach.' })
  sleeves!: Layer['sleeves'];
}
