import { Injectable } from '@nestjs/common';
import { v7 as uuid } from 'uuid';
import { ApiError } from '../../http/api-error.ts';
import { HandOffSender, resultColumns } from '../delivery/hand-off-sender.ts';
import { verdictOf } from '../delivery/verdict.ts';
import { answerDto } from '../outbox/hand-off.dto.ts';
import type { TestDto } from './kept-planner.dto.ts';
import type { PlannerRow } from './planner.entity.ts';

const BODY = JSON.stringify({ test: true });

/** Sends a planner something signed that means nothing, to see whether it can be reached and whether it checks signatures. */
@Injectable()
export class PlannerTest {
  constructor(private readonly sender: HandOffSender) {}

  /** @throws DomainError `planner-without-address` */
  async send(planner: PlannerRow): Promise<TestDto> {
    if (planner.document.address === null) {
      throw new ApiError('planner-without-address', 'This planner has no address to send a test to.');
    }
    const begun = Date.now();
    const result = await this.sender.send(planner, { id: uuid(), contentType: 'application/json', body: BODY });
    const at = new Date(begun).toISOString();
    const answer = answerDto({ at, milliseconds: Date.now() - begun, ...resultColumns(result) });
    return { ...answer, arrived: verdictOf(result) === 'arrived' };
  }
}
