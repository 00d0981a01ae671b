import { PLANNER_RECORD, TAKES_RECORD } from '#hand-off';
import { recordDto } from '../../records/record-dto.ts';

/** What a planner takes in. */
class TakesDto extends recordDto(TAKES_RECORD, {}) {}

/** A planner, as the maker registers it. */
export class PlannerDto extends recordDto(PLANNER_RECORD, { takes: TakesDto }) {}
