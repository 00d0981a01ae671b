import { LARGEST_MULTIPLE, PARITIES, type Parity } from '#counts';
import { chosenFields } from '#measure';
import { ChoiceField, NumberField, ObjectField, YesNoField } from '../http/fields.ts';
import { MultipleField } from '../http/multiple-field.ts';
import { recordDto } from '../records/record-dto.ts';
import { ComputeSheetDto } from '../target-sheets/sheet-request.dto.ts';

const OVER = chosenFields({ quantity: 'length', limits: { min: 5, max: 1000, words: 'from 5 mm to 1 m' } });

/** The length that stitches and rows are counted over. */
class GaugeLengthDto extends recordDto(OVER, {}) {}

/** Stitches and rows of a washed swatch. */
class GaugeDto {
  @NumberField({ min: 0.1, max: 1000, description: 'In the width named.', example: 14 })
  stitches!: number;
  @NumberField({ min: 0.1, max: 1000, description: 'In the same height.', example: 18 })
  rows!: number;
  @ObjectField(() => GaugeLengthDto, { description: 'Over what.', example: { value: 10, unit: 'cm' } })
  over!: GaugeLengthDto;
}

class GaugesDto {
  @ObjectField(() => GaugeDto)
  main!: GaugeDto;
  @ObjectField(() => GaugeDto, {
    optional: true,
    description:
      'Without it the rib is worked on the stitches of what lies above it, its rows as high as the main fabric’s.',
  })
  rib?: GaugeDto | null;
}

class MultiplesDto {
  @MultipleField({ largest: LARGEST_MULTIPLE, description: 'Of the stitches that a piece begins with.' })
  main?: [number, number] | null;
  @MultipleField({ largest: LARGEST_MULTIPLE, description: 'Of the stitches of a rib, and of a band picked up.' })
  rib?: [number, number] | null;
}

/** What a sheet is to be counted at. */
export class CountsDto {
  @ObjectField(() => GaugesDto)
  gauge!: GaugesDto;
  @ObjectField(() => MultiplesDto, { optional: true, description: 'Repeats of a stitch pattern.' })
  multiple?: MultiplesDto | null;
  @ChoiceField(PARITIES, { optional: true, description: 'Of the stitches that a piece begins with.' })
  parity?: Parity | null;
  @YesNoField({ optional: true, default: false, description: 'Every length an even number of rows.' })
  evenRows?: boolean | null;
}

/** The same, with the request of a sheet that is not kept. */
export class ComputeCountsDto extends CountsDto {
  @ObjectField(() => ComputeSheetDto, { description: 'What the sheet is made from.' })
  request!: ComputeSheetDto;
}
