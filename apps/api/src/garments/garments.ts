import { Injectable } from '@nestjs/common';
import { GARMENT_RECORD, type StoredGarment } from '#garment';
import { GARMENT } from '../records/record.entity.ts';
import { KeptRecords } from '../records/kept-records.ts';
import { readingAs, RecordRepository } from '../records/record.repository.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';

/** The garments a maker keeps. */
@Injectable()
export class Garments extends KeptRecords<StoredGarment> {
  constructor(work: UnitOfWork) {
    super('garment', '/v1/garments', new RecordRepository(GARMENT, readingAs(GARMENT_RECORD)), work);
  }
}
