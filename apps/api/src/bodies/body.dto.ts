import { BODY_DIMENSIONS, bodyProblems, FIGURES, type BodyDimension, type Figure } from '#body';
import type { How } from '#measure';
import { ChoiceField, ListField, NumberField, TextField, YesNoField } from '../http/fields.ts';
import { DiffersFromSiblings } from '../http/siblings.ts';
import type { WholeChecked } from '../http/whole-checked.ts';
import type { Measured } from '../measures/measured.ts';
import { measureErrors } from '../measures/in-request.ts';
import { MeasuredField } from '../measures/measured-field.ts';
import { LENGTH, MASS } from '../measures/quantity-kind.ts';
import { bodyInput, readingOfBody } from './body-input.ts';
import { HowField, TakenAtField } from '../measures/taken.ts';

const UNITS = [...LENGTH.units, ...MASS.units];

/** One measurement of a body, kept as it was entered. */
export class BodyMeasureDto implements Measured {
  @ChoiceField(BODY_DIMENSIONS, { description: 'ISO 8559-1’s term where it has one.', example: 'chest-girth' })
  @DiffersFromSiblings('name')
  name!: BodyDimension;
  @MeasuredField('value', UNITS, readingOfBody)
  value?: number | null;
  @MeasuredField('unit', UNITS, readingOfBody)
  unit?: string | null;
  @MeasuredField('text', UNITS, readingOfBody)
  text?: string | null;
  @MeasuredField('u', UNITS, readingOfBody)
  u?: number | null;
  @HowField()
  how?: How | null;
  @TakenAtField()
  takenAt?: string | null;
}

/** A body, as the maker gives it. */
export class BodyDto implements WholeChecked {
  @TextField({ optional: true, max: 120, description: 'What the maker calls it.', example: 'Me, in spring' })
  title?: string | null;
  @ChoiceField(FIGURES, { optional: true, default: 'unsaid' })
  figure?: Figure | null;
  @NumberField({ optional: true, min: 0, max: 120, description: 'In years; fractions for babies.' })
  age?: number | null;
  @YesNoField({ optional: true, default: true, description: 'Whether what was not measured may be estimated.' })
  estimate?: boolean | null;
  @ListField(() => BodyMeasureDto, { max: 100 })
  measures!: BodyMeasureDto[];

  /** What no person of that figure and age can be. */
  problems() {
    return measureErrors(bodyProblems(bodyInput(this)), this.measures);
  }
}
