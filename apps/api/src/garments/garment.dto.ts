import {
  CONSTRUCTIONS,
  GARMENT_DIMENSIONS,
  garmentProblems,
  WEARS,
  type Construction,
  type GarmentDimension,
  type Wears,
} from '#garment';
import type { How } from '#measure';
import { ChoiceField, ListField, ObjectField, TextField, YesNoField } from '../http/fields.ts';
import { DiffersFromSiblings } from '../http/siblings.ts';
import { ThicknessDto } from '../measures/length.dto.ts';
import type { Measured } from '../measures/measured.ts';
import { MeasuredField, type Reading } from '../measures/measured-field.ts';
import { LENGTH } from '../measures/quantity-kind.ts';
import { measureErrors } from '../measures/in-request.ts';
import type { WholeChecked } from '../http/whole-checked.ts';
import { garmentInput } from './garment-input.ts';
import { HowField, TakenAtField } from '../measures/taken.ts';
import { LayerDto } from './layer.dto.ts';

const READING: Reading = { kind: LENGTH, limits: { min: 1, max: 3000, words: 'from 1 mm to 3 m' } };
export const readingOfGarment = (): Reading => READING;

export const SLEEVE_FROM = ['seam', 'centre-back'] as const;

/** One measurement of a garment laid flat, kept as it was entered. */
export class GarmentMeasureDto implements Measured {
  @ChoiceField(GARMENT_DIMENSIONS, { example: 'chest-width' })
  @DiffersFromSiblings('name')
  name!: GarmentDimension;
  @MeasuredField('value', LENGTH.units, readingOfGarment)
  value?: number | null;
  @MeasuredField('unit', LENGTH.units, readingOfGarment)
  unit?: string | null;
  @MeasuredField('text', LENGTH.units, readingOfGarment)
  text?: string | null;
  @MeasuredField('u', LENGTH.units, readingOfGarment)
  u?: number | null;
  @HowField()
  how?: How | null;
  @TakenAtField()
  takenAt?: string | null;
  @ChoiceField(SLEEVE_FROM, {
    optional: true,
    default: 'seam',
    description: 'Of `sleeve-length` alone: where it was measured from.',
  })
  from?: (typeof SLEEVE_FROM)[number] | null;
}

/** How a garment wears, region by region. */
export class WearsDto {
  @ChoiceField(WEARS, { optional: true })
  chest?: Wears | null;
  @ChoiceField(WEARS, { optional: true })
  hip?: Wears | null;
  @ChoiceField(WEARS, { optional: true })
  'upper-arm'?: Wears | null;
  @ChoiceField(WEARS, { optional: true })
  length?: Wears | null;
  @ChoiceField(WEARS, { optional: true })
  sleeve?: Wears | null;
}

/** A garment that fits, laid flat, closed, smoothed and not stretched. */
export class GarmentDto implements WholeChecked {
  @TextField({ optional: true, max: 120, description: 'What the maker calls it.', example: 'The blue one' })
  title?: string | null;
  @ChoiceField(CONSTRUCTIONS)
  construction!: Construction;
  @ListField(() => GarmentMeasureDto, { max: 100 })
  measures!: GarmentMeasureDto[];
  @ObjectField(() => ThicknessDto, {
    description: 'Of one layer of its fabric: four layers under a small book, divided by four.',
  })
  thickness!: ThicknessDto;
  @ObjectField(() => LayerDto, { optional: true, description: 'What she wears beneath it when it fits.' })
  layer?: LayerDto | null;
  @YesNoField({ optional: true, default: false, description: 'Whether it is stretched when worn.' })
  wornStretched?: boolean | null;
  @ObjectField(() => WearsDto, { optional: true, description: 'How it wears, where she can say so.' })
  wears?: WearsDto | null;

  /** What no garment can be. */
  problems() {
    return measureErrors(garmentProblems(garmentInput(this)), this.measures);
  }
}
