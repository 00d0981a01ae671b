import { ApiProperty } from '@nestjs/swagger';
import { PageQuery } from '../../http/page.ts';
import { ChoiceField, IdField } from '../../http/fields.ts';
import { FAILURES, type Failure } from '../delivery/failure.ts';
import type { AttemptRow } from './attempt.entity.ts';
import { HAND_OFF_STATES, type HandOffRow, type HandOffState } from './hand-off.entity.ts';
import type { WithAttempts } from './hand-offs.ts';

const ID = { type: 'string', format: 'uuid' } as const;
const TIME = { type: 'string', format: 'date-time' } as const;

/** A request to hand a sheet on. */
export class HandOnDto {
  @IdField({ description: 'Of a registered planner with an address.' })
  plannerId!: string;
}

/** Which hand-offs are listed. */
export class HandOffsQuery extends PageQuery {
  @IdField({ optional: true, description: 'To this planner only.' })
  planner?: string | null;
  @IdField({ optional: true, description: 'Of this sheet only.' })
  targetSheet?: string | null;
  @ChoiceField(HAND_OFF_STATES, { optional: true, description: 'In this state only.' })
  state?: HandOffState | null;
}

/** A sheet on its way to a planner. */
export class HandOffDto {
  @ApiProperty({ ...ID, description: 'Also the `webhook-id` of every attempt.' })
  id!: string;
  @ApiProperty(ID)
  plannerId!: string;
  @ApiProperty(ID)
  targetSheetId!: string;
  @ApiProperty(TIME)
  createdAt!: string;
  @ApiProperty({ type: 'string' })
  contentType!: string;
  @ApiProperty({
    type: 'string',
    enum: [...HAND_OFF_STATES],
    description: 'waiting: to be sent, or sent again; arrived; dead: given up after a day, until it is sent again.',
  })
  state!: HandOffState;
  @ApiProperty({ type: 'integer', description: 'How often it has been tried.' })
  tries!: number;
  @ApiProperty({ ...TIME, nullable: true, description: 'When it is due; null when there is nothing more to do.' })
  nextTryAt!: string | null;
}

export class HandOffPage {
  @ApiProperty({ type: () => HandOffDto, isArray: true })
  items!: HandOffDto[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}

/** What came of posting to a planner. */
export class AnswerDto {
  @ApiProperty(TIME)
  at!: string;
  @ApiProperty({ type: 'integer', description: 'How long it took, ms.' })
  milliseconds!: number;
  @ApiProperty({ type: 'integer', nullable: true, description: 'The planner’s status; null when it did not answer.' })
  status!: number | null;
  @ApiProperty({
    type: 'string',
    nullable: true,
    enum: [...Object.keys(FAILURES), null],
    description: 'Why it did not.',
  })
  failure!: Failure | null;
  @ApiProperty({ type: 'string', nullable: true, description: 'The same in words.' })
  failureText!: string | null;
  @ApiProperty({ type: 'string', description: 'The first kilobyte of the planner’s answer.' })
  answer!: string;
}

/** A hand-off with what was sent and every try. */
export class HandOffWithAttemptsDto extends HandOffDto {
  @ApiProperty({ type: 'string', description: 'What is sent, exactly.' })
  body!: string;
  @ApiProperty({ type: () => AnswerDto, isArray: true, description: 'Every try, the oldest first.' })
  attempts!: AnswerDto[];
}

export function handOffDto(row: HandOffRow): HandOffDto {
  const { id, plannerId, targetSheetId, createdAt, contentType, state, attempts, nextTryAt } = row;
  return { id, plannerId, targetSheetId, createdAt, contentType, state, tries: attempts, nextTryAt };
}

/** As it was answered when it was handed on, whatever has come of it since. */
export function firstAnswer(row: HandOffRow): HandOffDto {
  return handOffDto({ ...row, state: 'waiting', attempts: 0, nextTryAt: row.createdAt });
}

export function answerDto(
  answer: Pick<AttemptRow, 'at' | 'milliseconds' | 'status' | 'failure' | 'answer'>,
): AnswerDto {
  const { at, milliseconds, status, failure } = answer;
  return { at, milliseconds, status, failure, failureText: failure && FAILURES[failure], answer: answer.answer };
}

export function handOffWithAttempts({ handOff, attempts }: WithAttempts): HandOffWithAttemptsDto {
  return { ...handOffDto(handOff), body: handOff.body, attempts: attempts.map(answerDto) };
}
