import { EASE_CATEGORIES, type EaseCategory } from '#fit';
import { ChoiceField, NumberField } from '../http/fields.ts';
import type { WholeChecked } from '../http/whole-checked.ts';
import type { Measured } from '../measures/measured.ts';
import { MeasuredField, type Reading } from '../measures/measured-field.ts';
import { LENGTH_DIFFERENCE } from '../measures/quantity-kind.ts';

const READING: Reading = { kind: LENGTH_DIFFERENCE, limits: { min: -1000, max: 2000, words: 'from -1 m to 2 m' } };
const always = (): Reading => READING;

function unlessCategory(ease: Measured): Reading | null {
  const { category, value, text } = ease as EaseDto;
  return category != null && value == null && text == null ? null : READING;
}

/** A difference in girth: negative where the new one is to be smaller. */
export class GirthDifferenceDto implements Measured {
  @MeasuredField('value', LENGTH_DIFFERENCE.units, always)
  value?: number | null;
  @MeasuredField('unit', LENGTH_DIFFERENCE.units, always)
  unit?: string | null;
  @MeasuredField('text', LENGTH_DIFFERENCE.units, always)
  text?: string | null;
}

/** Ease at the chest: a category and a place in it, or a difference in girth. */
export class EaseDto implements Measured, WholeChecked {
  @ChoiceField(EASE_CATEGORIES, { optional: true })
  category?: EaseCategory | null;
  @NumberField({
    optional: true,
    min: 0,
    max: 1,
    default: 0.5,
    description: '0 the closer end of the category, 1 its looser.',
  })
  place?: number | null;
  @MeasuredField('value', LENGTH_DIFFERENCE.units, unlessCategory)
  value?: number | null;
  @MeasuredField('unit', LENGTH_DIFFERENCE.units, unlessCategory)
  unit?: string | null;
  @MeasuredField('text', LENGTH_DIFFERENCE.units, unlessCategory)
  text?: string | null;

  problems() {
    const both = this.category != null && (this.value != null || this.text != null);
    return both ? [{ pointer: '/category', detail: 'give a category or a length, not both' }] : [];
  }
}
