import { FABRIC_RECORD, fabricFromRecord, GROWTH_RECORD, resolveFabric, STRETCH_RECORD } from '#fabric';
import type { CrossFieldRules } from '../http/cross-field.ts';
import { problemsFrom } from '../measures/in-request.ts';
import { ThicknessDto } from '../measures/length.dto.ts';
import { recordDto } from '../records/record-dto.ts';

/** How far it pulls, as (pulled − at rest)/at rest. */
class StretchDto extends recordDto(STRETCH_RECORD, {}) {}

/** What washing and hanging do, as (after − before)/before; negative where it shrinks. */
class GrowthDto extends recordDto(GROWTH_RECORD, {}) {}

const NESTED = { thickness: ThicknessDto, stretch: StretchDto, growth: GrowthDto };

/** A yarn and its swatch, as far as the maker knows them. */
export class FabricDto extends recordDto(FABRIC_RECORD, NESTED) implements CrossFieldRules {
  /** That its thickness is known somehow, and that what is said goes together. */
  problems() {
    return problemsFrom(() => resolveFabric(fabricFromRecord(this)));
  }
}
