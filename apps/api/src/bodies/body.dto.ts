import { BODY_RECORD, BODY_SIZE_RECORD, bodyFromRecord, bodyProblems, sizeTable, type Figure } from '#body';
import type { CrossFieldRules } from '../http/cross-field.ts';
import type { FieldError } from '../http/problem.ts';
import { measureErrors, problemsFrom } from '../measures/in-request.ts';
import { itemDto, recordDto } from '../records/record-dto.ts';

/** One measurement of a body, kept as it was entered. */
class BodyMeasureDto extends itemDto(BODY_RECORD.measures, {}) {}

/** A size that somebody buys. */
class BodySizeDto extends recordDto(BODY_SIZE_RECORD, {}) {}

/** A body, as the maker gives it. */
export class BodyDto
  extends recordDto(BODY_RECORD, { measures: BodyMeasureDto, size: BodySizeDto })
  implements CrossFieldRules
{
  /** What no person of that figure and age can be, and a size that there is not. */
  problems(): readonly FieldError[] {
    const { size } = this;
    const own = measureErrors(bodyProblems(bodyFromRecord({ ...this, size: null })), this.measures);
    if (size == null) return own;
    const unknown = problemsFrom(() => bodyFromRecord(this));
    return [...own, ...(unknown.length > 0 ? unknown : sizeOfAnother(size.table, this.figure ?? 'unsaid'))];
  }
}

const isAdult = (figure: Figure): boolean => figure === 'woman' || figure === 'man';

/** A child in the sizes of adults, or the other way round; an adult may buy in either's. */
function sizeOfAnother(table: string, figure: Figure): readonly FieldError[] {
  const of = sizeTable(table).figure;
  if (figure === 'unsaid' || figure === of || (isAdult(figure) && isAdult(of))) return [];
  const detail = `is of sizes for a ${of}, and the figure is ${figure}: choose a table for that figure, or leave the figure out`;
  return [{ pointer: '/size/table', detail }];
}
