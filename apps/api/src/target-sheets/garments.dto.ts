import { MOST_GARMENTS, SHEET_GARMENT_RECORD, type SheetGarmentRecord } from '#target-sheet';
import { GARMENT_CLASSES, GarmentDto, garmentErrors } from '../garments/garment.dto.ts';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { ListField, ObjectField } from '../http/fields.ts';
import type { FieldError } from '../http/problem.ts';
import { recordDto } from '../records/record-dto.ts';

/** A garment that fits, and whether the design is based on it. */
class SheetGarmentDto extends recordDto(SHEET_GARMENT_RECORD, GARMENT_CLASSES) implements CrossFieldRules {
  problems() {
    return garmentErrors(this);
  }
}

/** The garments that fit, of a request that brings them along. */
export class GarmentsDto {
  @ObjectField(() => GarmentDto, {
    optional: true,
    description: 'One that fits, and is the basis: short for `garments` with it alone.',
  })
  garment?: GarmentDto | null;
  @ListField(() => SheetGarmentDto, { optional: true, max: MOST_GARMENTS, description: 'All that fit.' })
  garments?: SheetGarmentDto[] | null;
}

/** The garments of a request, in either form. */
export const garmentsOf = ({ garment, garments }: GarmentsDto): readonly SheetGarmentRecord[] =>
  garment == null ? (garments ?? []) : [{ ...garment, basis: true }];

/** What contradicts itself in them. */
export const garmentsProblems = ({ garment, garments }: GarmentsDto): readonly FieldError[] => [
  ...(garment != null && garments != null ? [eitherForm('/garment')] : []),
  ...twoBases(garments ?? []),
];

/** The short form stands beside the list. */
export const eitherForm = (pointer: string): FieldError => ({
  pointer,
  detail: 'is short for one item of garments; give this or garments, not both',
});

/** Each after the first that is said to be the basis. */
export function twoBases(garments: readonly { readonly basis?: boolean | null }[]): readonly FieldError[] {
  const first = garments.findIndex(({ basis }) => basis === true);
  return garments.flatMap(({ basis }, place) =>
    basis === true && place !== first
      ? [{ pointer: `/garments/${place}/basis`, detail: `garment ${first} is the basis already; only one can be` }]
      : [],
  );
}
