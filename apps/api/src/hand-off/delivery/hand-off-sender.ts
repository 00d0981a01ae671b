import { Injectable } from '@nestjs/common';
import { DomainError } from '#measure';
import { clock } from '../../clock/steady-clock.ts';
import { newId } from '../../storage/new-id.ts';
import { PlannerSecrets } from '../planners/planner-secrets.ts';
import { signWebhook } from '../signing/sign-webhook.ts';
import type { Claim } from './claim.ts';
import type { Outcome } from './outbox-queue.ts';
import { PlannerPost, type PostResult } from './post.ts';
import { transitionAfter } from './transition.ts';

/** Something to send to a planner, signed. */
interface Message {
  readonly id: string;
  readonly contentType: string;
  readonly body: string;
}

/** Sends one hand-off to its planner, once. */
@Injectable()
export class HandOffSender {
  constructor(
    private readonly post: PlannerPost,
    private readonly secrets: PlannerSecrets,
  ) {}

  async deliver({ handOff, planner }: Claim): Promise<Outcome> {
    const begun = clock.now();
    const result = await this.send(planner, handOff);
    const ended = clock.now();
    const tries = { tries: handOff.attempts + 1, tryUntil: handOff.tryUntil };
    return {
      attempt: {
        id: newId(),
        makerId: handOff.makerId,
        handOffId: handOff.id,
        at: begun.toISOString(),
        milliseconds: ended.getTime() - begun.getTime(),
        ...resultColumns(result),
      },
      plannerId: planner.id,
      transition: transitionAfter(tries, result, ended, Math.random()),
    };
  }

  /** Signs and posts; a failure is part of the result. */
  async send(planner: Claim['planner'], { id, contentType, body }: Message): Promise<PostResult> {
    const { address } = planner.document;
    if (address === null) return { failure: 'without-address' };
    try {
      const now = new Date();
      const signed = signWebhook(id, Math.floor(now.getTime() / 1000), body, this.secrets.open(planner, now));
      return await this.post.send(address, { 'content-type': contentType, ...signed }, body);
    } catch (error) {
      if (error instanceof DomainError && error.code === 'secret-unreadable') return { failure: 'secret-unreadable' };
      throw error;
    }
  }
}

/** A result as an attempt is stored. */
export function resultColumns(result: PostResult): Pick<Outcome['attempt'], 'status' | 'failure' | 'answer'> {
  return 'failure' in result
    ? { status: null, failure: result.failure, answer: '' }
    : { status: result.status, failure: null, answer: result.answer };
}
