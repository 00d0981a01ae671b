import { BODY_RECORD, bodyFromRecord, bodyProblems } from '#body';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { measureErrors } from '../measures/in-request.ts';
import { itemDto, recordDto } from '../records/record-dto.ts';

/** One measurement of a body, kept as it was entered. */
class BodyMeasureDto extends itemDto(BODY_RECORD.measures, {}) {}

/** A body, as the maker gives it. */
export class BodyDto extends recordDto(BODY_RECORD, { measures: BodyMeasureDto }) implements CrossFieldRules {
  /** What no person of that figure and age can be. */
  problems() {
    return measureErrors(bodyProblems(bodyFromRecord(this)), this.measures);
  }
}
