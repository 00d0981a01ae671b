import { DESIGN_RECORD, GIRTH_DIFFERENCE_RECORD } from '#fit';
import type { CrossFieldRules } from '../http/cross-field.ts';
import type { FieldError } from '../http/problem.ts';
import { eitherDto, recordDto } from '../records/record-dto.ts';

/** A difference in girth: negative where the new one is to be smaller. */
class GirthDifferenceDto extends recordDto(GIRTH_DIFFERENCE_RECORD, {}) {}

/** Ease at the chest: as garments have it, a category and a place in it, or a difference in girth. */
export class EaseDto extends eitherDto(DESIGN_RECORD.ease, { change: GirthDifferenceDto }) implements CrossFieldRules {
  problems(): readonly FieldError[] {
    const ways = [
      { field: 'as', given: this.as != null },
      { field: 'category', given: this.category != null },
      { field: this.text == null ? 'value' : 'text', given: this.value != null || this.text != null },
    ].filter(({ given }) => given);
    const wrong = ways.slice(1).map(({ field }): FieldError => ({
      pointer: `/${field}`,
      detail: 'give one of: as, a category, a length',
    }));
    if (this.change == null || this.as === 'garment') return wrong;
    return [...wrong, { pointer: '/change', detail: 'goes with as: garment alone' }];
  }
}
