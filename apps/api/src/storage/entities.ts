import { MAKER } from '../maker/maker.entity.ts';
import { BODY, FABRIC, GARMENT } from '../records/record.entity.ts';

export const ENTITIES = [MAKER, BODY, GARMENT, FABRIC];
