import { Injectable } from '@nestjs/common';
import { BODY_RECORD, type StoredBody } from '#body';
import { BODY } from '../records/record.entity.ts';
import { KeptRecords } from '../records/kept-records.ts';
import { readingAs, RecordRepository } from '../records/record.repository.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';

/** The bodies a maker keeps. */
@Injectable()
export class Bodies extends KeptRecords<StoredBody> {
  constructor(work: UnitOfWork) {
    super('body', '/v1/bodies', new RecordRepository(BODY, readingAs(BODY_RECORD)), work);
  }
}
