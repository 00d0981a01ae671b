import { ApiProperty, IntersectionType } from '@nestjs/swagger';
import { PLANNER_RECORD, TAKES_RECORD } from '#hand-off';
import { IdField } from '../../http/fields.ts';
import { keptDocument } from '../../records/answer.ts';
import { Kept } from '../../records/kept.dto.ts';
import { keptRecordDto } from '../../records/kept-record-dto.ts';
import { AnswerDto } from '../outbox/hand-off.dto.ts';
import type { Package } from '../outbox/package.ts';
import { PLANNER_STATES, type PlannerRow, type PlannerState } from './planner.entity.ts';
import type { WithSecret } from './planners.ts';

const TIME = { type: 'string', format: 'date-time', nullable: true } as const;

class KeptTakes extends keptRecordDto(TAKES_RECORD, {}) {}

/** What a planner takes is always kept, with its defaults; its address is null where it has none. */
class KeptPlannerDocument extends keptRecordDto(
  { title: PLANNER_RECORD.title, takes: { kind: 'record', fields: TAKES_RECORD } },
  { takes: KeptTakes },
) {
  @ApiProperty({
    type: 'string',
    nullable: true,
    description: PLANNER_RECORD.address.description,
    example: PLANNER_RECORD.address.example,
  })
  address!: string | null;
}

/** A registered planner. */
export class KeptPlanner extends IntersectionType(Kept, KeptPlannerDocument) {
  @ApiProperty({
    type: 'string',
    enum: [...PLANNER_STATES],
    description: 'active; paused: hand-offs wait; stopped: it answered 410 and wants nothing more.',
  })
  state!: PlannerState;
  @ApiProperty({ ...TIME, description: 'Since when its newest signing secret holds; null without an address.' })
  secretMadeAt!: string | null;
  @ApiProperty({ ...TIME, description: 'Until when hand-offs are signed with the secret before as well.' })
  oldSecretUntil!: string | null;
}

/** A planner where a signing secret was made. */
export class PlannerWithSecret extends KeptPlanner {
  @ApiProperty({
    type: 'string',
    nullable: true,
    description:
      'A new signing secret (Standard Webhooks: whsec_ and base64), shown this once; null when none was made.',
    example: 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw',
  })
  secret!: string | null;
}

export class PlannerPage {
  @ApiProperty({ type: () => KeptPlanner, isArray: true })
  items!: KeptPlanner[];
  @ApiProperty({ type: 'string', nullable: true, description: 'Cursor of the next page; null at the end.' })
  next!: string | null;
}

/** Which sheet is looked at. */
export class PreviewQuery {
  @IdField({ description: 'A kept sheet.' })
  targetSheet!: string;
}

class WarningDto {
  @ApiProperty({ type: 'string', description: 'Our name for it.' })
  name!: string;
  @ApiProperty({ type: 'string' })
  message!: string;
}

/** Exactly what a planner would be sent. */
export class PreviewDto {
  @ApiProperty({ type: 'string' })
  contentType!: string;
  @ApiProperty({ type: 'string', description: 'To the letter.' })
  body!: string;
  @ApiProperty({ type: () => WarningDto, isArray: true, description: 'Left out, or rounded further than it may be.' })
  warnings!: readonly WarningDto[];
}

/** What came of a test. */
export class TestDto extends AnswerDto {
  @ApiProperty({ type: 'boolean', description: 'Whether the planner took it (2xx).' })
  arrived!: boolean;
}

export function keptPlanner(row: PlannerRow): KeptPlanner {
  const [newest, old] = row.secrets;
  return {
    ...keptDocument(row),
    takes: { ...row.document.takes, required: [...row.document.takes.required] },
    state: row.state,
    secretMadeAt: newest?.madeAt ?? null,
    oldSecretUntil: old?.validUntil ?? null,
  };
}

export const plannerWithSecret = ({ planner, secret }: WithSecret): PlannerWithSecret => ({
  ...keptPlanner(planner),
  secret,
});

export const previewDto = ({ contentType, body, warnings }: Package): PreviewDto => ({ contentType, body, warnings });
