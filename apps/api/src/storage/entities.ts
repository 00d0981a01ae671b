import { MAKER } from '../maker/maker.entity.ts';
import { BODY, FABRIC, GARMENT } from '../records/record.entity.ts';
import { TARGET_SHEET } from '../target-sheets/target-sheet.entity.ts';

export const ENTITIES = [MAKER, BODY, GARMENT, FABRIC, TARGET_SHEET];
