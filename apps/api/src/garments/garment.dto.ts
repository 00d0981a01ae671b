import { GARMENT_RECORD, garmentFromRecord, garmentProblems, WEARS_RECORD, type GarmentRecord } from '#garment';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { measureErrors } from '../measures/in-request.ts';
import { ThicknessDto } from '../measures/length.dto.ts';
import { itemDto, recordDto } from '../records/record-dto.ts';
import { LayerDto } from './layer.dto.ts';

/** One measurement of a garment laid flat, kept as it was entered. */
class GarmentMeasureDto extends itemDto(GARMENT_RECORD.measures, {}) {}

/** How a garment wears, region by region. */
class WearsDto extends recordDto(WEARS_RECORD, {}) {}

/** The classes of the records within a garment. */
export const GARMENT_CLASSES = {
  measures: GarmentMeasureDto,
  thickness: ThicknessDto,
  layer: LayerDto,
  wears: WearsDto,
};

/** A garment that fits, laid flat, closed, smoothed and not stretched. */
export class GarmentDto extends recordDto(GARMENT_RECORD, GARMENT_CLASSES) implements CrossFieldRules {
  problems() {
    return garmentErrors(this);
  }
}

/** What no garment can be. */
export const garmentErrors = (garment: GarmentRecord) =>
  measureErrors(garmentProblems(garmentFromRecord(garment)), garment.measures);
