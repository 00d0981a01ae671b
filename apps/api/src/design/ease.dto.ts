import { DESIGN_RECORD, GIRTH_DIFFERENCE_RECORD } from '#fit';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { eitherDto, recordDto } from '../records/record-dto.ts';

/** A difference in girth: negative where the new one is to be smaller. */
export class GirthDifferenceDto extends recordDto(GIRTH_DIFFERENCE_RECORD, {}) {}

/** Ease at the chest: a category and a place in it, or a difference in girth. */
export class EaseDto extends eitherDto(DESIGN_RECORD.ease) implements CrossFieldRules {
  problems() {
    const both = this.category != null && (this.value != null || this.text != null);
    return both ? [{ pointer: '/category', detail: 'give a category or a length, not both' }] : [];
  }
}
