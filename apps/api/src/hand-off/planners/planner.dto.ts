import { PLANNER_FORMATS, type PlannerFormat } from '#hand-off';
import { SHEET_UNITS, type SheetUnit } from '#target-sheet';
import { ChoiceField, NumberField, ObjectField, TextField, TextListField } from '../../http/fields.ts';
import { NamesField } from './names-field.ts';

/** What a planner takes in. */
export class TakesDto {
  @ChoiceField(SHEET_UNITS, { optional: true, default: 'mm', description: 'Of every length it is sent.' })
  unit?: SheetUnit | null;
  @NumberField({
    optional: true,
    min: 0,
    max: 100,
    description:
      'Lengths go as whole multiples of it, in `unit`, within how far each may be rounded; null leaves them.',
    example: 0.25,
  })
  roundingStep?: number | null;
  @ChoiceField(PLANNER_FORMATS, {
    optional: true,
    default: 'flat',
    description: 'sheet: the target sheet itself (pushed as a link); flat: one JSON value of named fields; csv.',
  })
  format?: PlannerFormat | null;
  @NamesField()
  names?: Record<string, string> | null;
  @TextListField({
    optional: true,
    max: 200,
    longest: 80,
    description: 'Our names without which the planner cannot work: a sheet that lacks one is not sent.',
    example: ['assembled/chest-width'],
  })
  required?: string[] | null;
}

/** A planner, as the maker registers it. */
export class PlannerDto {
  @TextField({ max: 120, description: 'What the maker calls it.', example: 'Row by row' })
  title!: string;
  @TextField({
    optional: true,
    max: 2000,
    description: 'Where hand-offs are posted to, https. Without it the planner pulls, or is handed sheets by hand.',
    example: 'https://planner.example/take',
  })
  address?: string | null;
  @ObjectField(() => TakesDto, { optional: true })
  takes?: TakesDto | null;
}
