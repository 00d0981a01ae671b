import { Injectable } from '@nestjs/common';
import { GARMENT } from '../records/record.entity.ts';
import { KeptRecords } from '../records/kept-records.ts';
import { RecordRepository } from '../records/record.repository.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';
import type { GarmentDocument } from './garment-document.ts';

/** The garments a maker keeps. */
@Injectable()
export class Garments extends KeptRecords<GarmentDocument> {
  constructor(work: UnitOfWork) {
    super('garment', new RecordRepository(GARMENT), work);
  }
}
