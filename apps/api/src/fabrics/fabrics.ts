import { Injectable } from '@nestjs/common';
import { FABRIC } from '../records/record.entity.ts';
import { KeptRecords } from '../records/kept-records.ts';
import { RecordRepository } from '../records/record.repository.ts';
import { UnitOfWork } from '../storage/unit-of-work.ts';
import type { FabricDocument } from './fabric-document.ts';

/** The fabrics a maker keeps. */
@Injectable()
export class Fabrics extends KeptRecords<FabricDocument> {
  constructor(work: UnitOfWork) {
    super('fabric', new RecordRepository(FABRIC), work);
  }
}
