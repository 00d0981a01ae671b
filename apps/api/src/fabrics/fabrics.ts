import { Injectable } from '@nestjs/common';
import { FABRIC_RECORD, type StoredFabric } from '#fabric';
import { FABRIC } from '../records/record.entity.ts';
import { KeptRecords } from '../records/kept-records.ts';
import { readingAs, RecordRepository } from '../records/record.repository.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';

/** The fabrics a maker keeps. */
@Injectable()
export class Fabrics extends KeptRecords<StoredFabric> {
  constructor(work: UnitOfWork) {
    super('fabric', '/v1/fabrics', new RecordRepository(FABRIC, readingAs(FABRIC_RECORD)), work);
  }
}
