import { CHOSEN_LENGTH_RECORD } from '#fit';
import { THICKNESS_RECORD } from '#measure';
import { recordDto } from '../records/record-dto.ts';

/** Thickness of one layer of fabric, with its uncertainty where it is known. */
export class ThicknessDto extends recordDto(THICKNESS_RECORD, {}) {}

/** A chosen length on a garment, finished: a band, a rib, a neck. */
export class ChosenLengthDto extends recordDto(CHOSEN_LENGTH_RECORD, {}) {}
