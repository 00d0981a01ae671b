import { THICKNESS_RECORD } from '#measure';
import { keptRecordDto } from '../records/kept-record-dto.ts';

/** A thickness as it is kept. */
export class KeptThickness extends keptRecordDto(THICKNESS_RECORD, {}) {}
