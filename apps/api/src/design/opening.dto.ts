import { OPENING_RECORD } from '#fit';
import { ChosenLengthDto } from '../measures/length.dto.ts';
import { recordDto } from '../records/record-dto.ts';

/** Where the neck opens, and how far. */
export class OpeningDto extends recordDto(OPENING_RECORD, { length: ChosenLengthDto }) {}
