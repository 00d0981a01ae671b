import { Injectable } from '@nestjs/common';
import { v7 as uuid } from 'uuid';
import { DomainError } from '#measure';
import { PlannerSecrets } from '../planners/planner-secrets.ts';
import { signWebhook } from '../signing/sign-webhook.ts';
import type { Claimed } from './claimed.ts';
import type { Outcome } from './deliveries.ts';
import { PlannerPost, type PostResult } from './post.ts';
import { settle } from './settlement.ts';

/** Something to send to a planner, signed. */
export interface Letter {
  readonly id: string;
  readonly contentType: string;
  readonly body: string;
}

/** Takes one hand-off to its planner and tells what came of it. */
@Injectable()
export class Courier {
  constructor(
    private readonly post: PlannerPost,
    private readonly secrets: PlannerSecrets,
  ) {}

  async deliver({ handOff, planner }: Claimed): Promise<Outcome> {
    const begun = new Date();
    const result = await this.send(planner, handOff);
    const ended = new Date();
    const tries = { tries: handOff.attempts + 1, tryUntil: handOff.tryUntil };
    return {
      attempt: {
        id: uuid(),
        makerId: handOff.makerId,
        handOffId: handOff.id,
        at: begun.toISOString(),
        milliseconds: ended.getTime() - begun.getTime(),
        ...written(result),
      },
      plannerId: planner.id,
      settlement: settle(tries, result, ended, Math.random()),
    };
  }

  /** Signs and posts; what goes wrong is part of the result. */
  async send(planner: Claimed['planner'], { id, contentType, body }: Letter): Promise<PostResult> {
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

/** A result as it is kept. */
export function written(result: PostResult): Pick<Outcome['attempt'], 'status' | 'failure' | 'answer'> {
  return 'failure' in result
    ? { status: null, failure: result.failure, answer: '' }
    : { status: result.status, failure: null, answer: result.answer };
}
