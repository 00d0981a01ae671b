import { Injectable } from '@nestjs/common';
import { HandOffSettings } from '../hand-off-settings.ts';
import { SecretBox } from '../signing/secret-box.ts';
import { newWebhookSecret } from '../signing/webhook-secret.ts';
import type { PlannerRow, SealedSecret } from './planner.entity.ts';

/** How long an old secret signs beside the new one, for the planner's side to be changed. */
const OVERLAP_MS = 24 * 3600 * 1000;

/** A new secret, to be shown once, and all of a planner's secrets with it, to be stored. */
interface MadeSecret {
  readonly shown: string;
  readonly secrets: SealedSecret[];
}

/** The signing secrets of planners: made, replaced with an overlap, opened to sign. */
@Injectable()
export class PlannerSecrets {
  private readonly box: SecretBox;

  constructor({ key }: HandOffSettings) {
    this.box = new SecretBox(key);
  }

  /** A new secret before the one there is, which stays valid for a day; an older one, or one sealed with a lost key, is dropped. */
  make(plannerId: string, before: readonly SealedSecret[], now: Date): MadeSecret {
    const shown = newWebhookSecret();
    const fresh = { sealed: this.box.seal(shown, plannerId), madeAt: now.toISOString(), validUntil: null };
    const validUntil = new Date(now.getTime() + OVERLAP_MS).toISOString();
    const old = before.slice(0, 1).filter(({ sealed }) => this.opens(sealed, plannerId));
    return { shown, secrets: [fresh, ...old.map((secret) => ({ ...secret, validUntil }))] };
  }

  /** The secrets to sign with now. @throws DomainError `secret-unreadable` */
  open({ id, secrets }: Pick<PlannerRow, 'id' | 'secrets'>, now: Date): string[] {
    const valid = secrets.filter(({ validUntil }) => validUntil === null || validUntil > now.toISOString());
    return valid.map(({ sealed }) => this.box.open(sealed, id));
  }

  private opens(sealed: string, plannerId: string): boolean {
    try {
      this.box.open(sealed, plannerId);
      return true;
    } catch {
      return false;
    }
  }
}
